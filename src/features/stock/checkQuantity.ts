import type { Checklist } from '../../db/checklist.js';

/** Bounds a count so that sums over a whole collection stay whole numbers of 32 bits. */
const mostUnits = 1_000_000;

export function checkQuantity(check: Checklist, quantity: number, path: string[], least = 1): void {
  check.that(
    quantity >= least && quantity <= mostUnits,
    `Give a number from ${least} to ${mostUnits}; this is ${quantity}.`,
    path,
  );
}
