import { fitOutCompleteness } from '../../domain/completeness/fitOutCompleteness.js';
import type { PositionState } from '../../domain/completeness/positionCheck.js';
import type { CompletenessFacts } from '../inspections/completenessFacts.reads.js';
import type { Completeness } from './completeness.type.js';
import { shownBasis } from './standingFacts.js';

/** Completeness against the model's fit-out, and the positions that it rests on. */
export function completenessStanding(facts: CompletenessFacts, nowMs: number) {
  const { fitOut, checks, fittings } = facts;
  const result = fitOutCompleteness(fitOut, checks, fittings, nowMs);
  const required = result.positions.filter((position) => position.isRequired);
  const named = (state: PositionState): string[] =>
    required.filter((position) => position.state === state).map(({ positionKey }) => positionKey);
  const shown: Completeness = {
    share: result.share === null ? null : Math.round(result.share * 10_000) / 10_000,
    required: required.length,
    present: result.requiredCounts.PRESENT,
    missing: named('MISSING'),
    wrong: named('WRONG'),
    unknown: named('UNKNOWN'),
    basis: shownBasis(result.basis, nowMs),
  };
  return { completeness: shown, positions: result.positions };
}
