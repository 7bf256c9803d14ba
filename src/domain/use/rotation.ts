import { compareText } from '../compareText.js';

export interface Rested {
  readonly rigId: string;
  /** What ties are settled by. */
  readonly inventoryNumber: string;
  /** When it was last in use; null: never as far as is recorded. */
  readonly lastUsedAtMs: number | null;
}

/** Longest idle first: those never used before all others, ties by inventory number. */
export function rotation<Rig extends Rested>(rigs: readonly Rig[]): Rig[] {
  return [...rigs].sort(
    (left, right) =>
      (left.lastUsedAtMs ?? -Infinity) - (right.lastUsedAtMs ?? -Infinity) ||
      compareText(left.inventoryNumber, right.inventoryNumber),
  );
}
