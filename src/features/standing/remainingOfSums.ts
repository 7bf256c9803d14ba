import { lognormalParameters } from '../../domain/estimates/lognormalParameters.js';
import type { WorkSums } from './collectionStanding.reads.js';
import type { RemainingWork } from './remainingWork.type.js';
import { hundredths, shownBasis } from './standingFacts.js';

/** Standard normal quantiles; tables of the normal distribution give 0.8416 and 1.6449. */
const z80 = 0.841621;
const z95 = 1.644854;

/**
 * Work left in the whole collection, from the means and variances of its items: a sum of many
 * skewed parts, read as the lognormal of the same mean and variance (Fenton and Wilkinson's method).
 */
export function remainingOfSums(sums: WorkSums, nowMs: number): RemainingWork {
  const mean = sums.expectedRemainingMinutes / 60;
  const deviation = Math.sqrt(sums.remainingSquareMinutes) / 60;
  const { mu, sigma } =
    mean > 0 ? lognormalParameters(mean, deviation / mean) : { mu: -Infinity, sigma: 0 };
  return {
    expectedHours: hundredths(mean),
    p50Hours: hundredths(Math.exp(mu)),
    p80Hours: hundredths(Math.exp(mu + z80 * sigma)),
    p95Hours: hundredths(Math.exp(mu + z95 * sigma)),
    openTasks: sums.openTasks,
    refutedTasks: sums.refutedTasks,
    basis: shownBasis(
      {
        method:
          'Means and variances of what is left on every item in the collection, added up; percentiles of the lognormal with that mean and variance.',
        counted: [
          { what: 'items', count: sums.items },
          { what: 'open tasks', count: sums.openTasks },
        ],
      },
      nowMs,
      ['Items run over or under independently of one another.'],
    ),
  };
}
