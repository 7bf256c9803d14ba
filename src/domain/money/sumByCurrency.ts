import { addMoney } from './addMoney.js';
import type { Money } from './money.js';

/**
 * One total per currency, ordered by currency code; nothing is converted.
 * @throws RangeError as `addMoney`, when a total cannot be kept exactly.
 */
export function sumByCurrency(amounts: Iterable<Money>): Money[] {
  const totals = new Map<string, Money>();
  for (const amount of amounts) {
    const soFar = totals.get(amount.currency) ?? { minorUnits: 0, currency: amount.currency };
    totals.set(amount.currency, addMoney(soFar, amount));
  }
  return [...totals.values()].sort((left, right) => (left.currency < right.currency ? -1 : 1));
}
