import type { MoneyInput } from '../../api/kit/money.type.js';
import type { Checklist } from '../../db/checklist.js';
import type { Money } from '../../domain/money/money.js';
import { parseAmount } from '../../domain/money/parseAmount.js';
import { currencyExponent } from './currencyExponent.js';

/** Money as a person gave it, in minor units; what is wrong goes to the checklist. */
export function readMoney(check: Checklist, input: MoneyInput, path: string[]): Money {
  const nothing = { minorUnits: 0, currency: input.currency };
  const exponent = currencyExponent(input.currency);
  if (exponent === null) {
    check.refuse(`"${input.currency}" is not a currency code of ISO 4217, such as EUR or JPY.`, [
      ...path,
      'currency',
    ]);
    return nothing;
  }
  const parsed = parseAmount(input.amount, exponent);
  if (parsed.kind === 'amount') return { ...nothing, minorUnits: parsed.minorUnits };
  check.refuse(parsed.why, [...path, 'amount']);
  return nothing;
}
