import { quantileOfSorted } from '../estimates/quantileOfSorted.js';

/** What trials say of a number of hours. */
export interface HoursOfTrials {
  /** Mean of the trials. */
  readonly expectedHours: number;
  readonly p50Hours: number;
  readonly p80Hours: number;
  readonly p95Hours: number;
  /** Square hours, of the trials. */
  readonly varianceHours: number;
  /** One standard error of the mean, of the p80 and (in square hours) of the variance, by chance. */
  readonly standardError: {
    readonly meanHours: number;
    readonly p80Hours: number;
    readonly varianceHours: number;
  };
}

/**
 * Percentiles by Hyndman and Fan's definition 7. The standard error of the p80 is half the distance
 * between the values one binomial standard deviation below and above it in rank.
 *
 * @param trials at least one; their order is kept.
 */
export function summarise(trials: Float64Array): HoursOfTrials {
  const count = trials.length;
  const expectedHours = trials.reduce((sum, hours) => sum + hours, 0) / count;
  let second = 0;
  let fourth = 0;
  for (const hours of trials) {
    const square = (hours - expectedHours) ** 2;
    second += square / count;
    fourth += square ** 2 / count;
  }
  const sorted = trials.slice().sort();
  const slack = Math.sqrt((0.8 * 0.2) / count);
  const rank = (probability: number) => quantileOfSorted(sorted, probability);
  return {
    expectedHours,
    p50Hours: rank(0.5),
    p80Hours: rank(0.8),
    p95Hours: rank(0.95),
    varianceHours: second,
    standardError: {
      meanHours: Math.sqrt(second / count),
      p80Hours: (rank(Math.min(1, 0.8 + slack)) - rank(Math.max(0, 0.8 - slack))) / 2,
      varianceHours: Math.sqrt(Math.max(0, fourth - second ** 2) / count),
    },
  };
}
