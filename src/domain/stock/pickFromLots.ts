/** A lot to pick from, with what may be picked. */
export interface OpenLot {
  readonly lotId: string;
  /** Whole units, zero or more. */
  readonly available: number;
}

export interface LotPick {
  readonly lotId: string;
  readonly quantity: number;
}

export interface Picking {
  readonly picks: readonly LotPick[];
  /** How many units the lots could not give; zero when the picks add up to what was wanted. */
  readonly missing: number;
}

/**
 * Picks a quantity from lots in the order given (the oldest first for first in, first out), each
 * emptied before the next is touched. Never more than a lot has.
 * @param wanted whole units, zero or more
 */
export function pickFromLots(lots: readonly OpenLot[], wanted: number): Picking {
  let missing = wanted;
  const picks: LotPick[] = [];
  for (const { lotId, available } of lots) {
    const quantity = Math.min(missing, Math.max(0, available));
    if (quantity === 0) continue;
    picks.push({ lotId, quantity });
    missing -= quantity;
  }
  return { picks, missing };
}
