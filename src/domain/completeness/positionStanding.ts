import type { Fitting } from '../parts/fitting.js';
import type { PositionCheck, PositionState } from './positionCheck.js';

export interface PositionStanding {
  readonly positionKey: string;
  readonly isRequired: boolean;
  readonly state: PositionState;
  /** What the state rests on: a check, the record of a fitting or removal, or nothing yet. */
  readonly restsOn: 'CHECK' | 'FITTING' | 'REMOVAL' | 'NOTHING';
  /** When that was; null when it rests on nothing. */
  readonly sinceMs: number | null;
  /** The check it rests on, if any. */
  readonly checkId: string | null;
  /** The component recorded as fitted or removed, if the state rests on that. */
  readonly componentId: string | null;
}

/** One thing known of a position at an instant. */
export type PositionEvidence = Omit<PositionStanding, 'positionKey' | 'isRequired'> & {
  readonly sinceMs: number;
};

export function evidenceOfCheck(check: PositionCheck): PositionEvidence {
  const { state, checkedAtMs: sinceMs, checkId } = check;
  return { state, restsOn: 'CHECK', sinceMs, checkId, componentId: null };
}

/**
 * A fitting tells of itself and, once it has ended by `asOfMs`, of an emptied place. One that ended
 * at the instant it began was never there and tells nothing.
 */
export function evidenceOfFitting(fitting: Fitting, asOfMs: number): PositionEvidence[] {
  const { componentId, fittedAtMs, removedAtMs } = fitting;
  if (removedAtMs === fittedAtMs) return [];
  const event = { checkId: null, componentId };
  const fitted = { state: 'PRESENT', restsOn: 'FITTING', sinceMs: fittedAtMs, ...event } as const;
  if (removedAtMs === null || removedAtMs > asOfMs) return [fitted];
  return [fitted, { state: 'MISSING', restsOn: 'REMOVAL', sinceMs: removedAtMs, ...event }];
}
