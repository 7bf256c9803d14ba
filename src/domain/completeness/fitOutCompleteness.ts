import type { Basis } from '../basis.js';
import type { Fitting } from '../parts/fitting.js';
import type { FitOutPosition } from './fitOutPosition.js';
import type { PositionCheck, PositionState } from './positionCheck.js';
import {
  evidenceOfCheck,
  evidenceOfFitting,
  type PositionEvidence,
  type PositionStanding,
} from './positionStanding.js';

export interface FitOutCompleteness {
  /** Required positions present ÷ required positions, 0 to 1; null when none is required. */
  readonly share: number | null;
  readonly requiredCounts: Readonly<Record<PositionState, number>>;
  readonly optionalCounts: Readonly<Record<PositionState, number>>;
  /** Every position of the fit-out with its state, in the order given. */
  readonly positions: readonly PositionStanding[];
  /** The positions found empty, required ones first. */
  readonly missing: readonly PositionStanding[];
  readonly basis: Basis;
}

/**
 * How complete an item is against its model's fit-out. For each position the latest check, fitting
 * or removal up to `asOfMs` counts; with none of them the position is UNKNOWN. At one instant an
 * event outweighs a check, and a fitting outweighs a removal (an exchange leaves the new part).
 * Only a position known to be PRESENT counts towards the share. Evidence on positions that the
 * fit-out does not name is left out.
 */
export function fitOutCompleteness(
  fitOut: readonly FitOutPosition[],
  checks: readonly PositionCheck[],
  fittings: readonly Fitting[],
  asOfMs: number,
): FitOutCompleteness {
  const latest = new Map<string, PositionEvidence>();
  const consider = (positionKey: string, evidence: PositionEvidence): void => {
    const held = latest.get(positionKey);
    if (evidence.sinceMs <= asOfMs && (held === undefined || outweighs(evidence, held))) {
      latest.set(positionKey, evidence);
    }
  };
  for (const check of checks) consider(check.positionKey, evidenceOfCheck(check));
  for (const fitting of fittings) {
    for (const evidence of evidenceOfFitting(fitting, asOfMs)) {
      consider(fitting.positionKey, evidence);
    }
  }

  const positions = fitOut.map((position) => ({
    ...position,
    ...(latest.get(position.positionKey) ?? NOTHING_KNOWN),
  }));
  const required = positions.filter((position) => position.isRequired);
  const optional = positions.filter((position) => !position.isRequired);
  const requiredCounts = countStates(required);
  const restingOn = (...grounds: PositionStanding['restsOn'][]): number =>
    positions.filter((position) => grounds.includes(position.restsOn)).length;
  return {
    share: required.length === 0 ? null : requiredCounts.PRESENT / required.length,
    requiredCounts,
    optionalCounts: countStates(optional),
    positions,
    missing: [...required, ...optional].filter((position) => position.state === 'MISSING'),
    basis: {
      counted: [
        { what: 'required positions', count: required.length },
        { what: 'positions known by a check', count: restingOn('CHECK') },
        {
          what: 'positions known by a recorded fitting or removal',
          count: restingOn('FITTING', 'REMOVAL'),
        },
        { what: 'positions never checked', count: restingOn('NOTHING') },
      ],
      method:
        'Required positions present divided by required positions; for each position the latest check, fitting or removal counts.',
      asOfMs,
    },
  };
}

const NOTHING_KNOWN = {
  state: 'UNKNOWN',
  restsOn: 'NOTHING',
  sinceMs: null,
  checkId: null,
  componentId: null,
} as const;

const WEIGHT_AT_ONE_INSTANT = { NOTHING: 0, CHECK: 1, REMOVAL: 2, FITTING: 3 } as const;

function outweighs(evidence: PositionEvidence, held: PositionEvidence): boolean {
  if (evidence.sinceMs !== held.sinceMs) return evidence.sinceMs > held.sinceMs;
  return WEIGHT_AT_ONE_INSTANT[evidence.restsOn] >= WEIGHT_AT_ONE_INSTANT[held.restsOn];
}

function countStates(positions: readonly PositionStanding[]): Record<PositionState, number> {
  const counts = { PRESENT: 0, MISSING: 0, WRONG: 0, UNKNOWN: 0 };
  for (const position of positions) counts[position.state] += 1;
  return counts;
}
