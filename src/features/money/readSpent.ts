import type { MoneyInput } from '../../api/kit/money.type.js';
import type { Checklist } from '../../db/checklist.js';
import type { Money } from '../../domain/money/money.js';
import { readMoney } from './readMoney.js';

/** Bounds each amount so that sums over a whole collection stay exact, far below 2^53. */
const largestMinorUnits = 1_000_000_000_000;

/** Money that changed hands. @param whyNotNegative the refusal of an amount below zero; null: allowed. */
export function readSpent(
  check: Checklist,
  input: MoneyInput,
  path: string[],
  whyNotNegative: string | null,
): Money {
  const money = readMoney(check, input, path);
  const at = [...path, 'amount'];
  if (whyNotNegative !== null) check.that(money.minorUnits >= 0, whyNotNegative, at);
  check.that(
    Math.abs(money.minorUnits) <= largestMinorUnits,
    `${input.amount} ${input.currency} is more than this program keeps exactly in sums; is a mark missing?`,
    at,
  );
  return money;
}
