import type { Checklist } from '../../db/checklist.js';
import { readSpent } from '../money/readSpent.js';

/** A stated value in the currency of the lot, in minor units. */
export function readStatedValue(
  check: Checklist,
  amount: string | null | undefined,
  currency: string,
  path: string[],
): number | null {
  if (amount === null || amount === undefined) return null;
  const money = readSpent(check, { amount, currency }, path, 'A value cannot be below zero.');
  return money.minorUnits;
}
