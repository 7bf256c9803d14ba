/**
 * PRESENT: the right part is there. MISSING: the place is empty. WRONG: something else is there.
 * UNKNOWN: looked at and not told, or never looked at.
 */
export type PositionState = 'PRESENT' | 'MISSING' | 'WRONG' | 'UNKNOWN';

/** Someone looked at a position. */
export interface PositionCheck {
  readonly checkId: string;
  readonly positionKey: string;
  readonly state: PositionState;
  readonly checkedAtMs: number;
}
