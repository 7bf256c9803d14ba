import type { MoneyAmount } from '../../api/kit/money.type.js';
import { formatAmount } from '../../domain/money/formatAmount.js';
import { currencyExponent } from './currencyExponent.js';

/** Kept minor units as the API shows money. */
export const moneyAmount = (minorUnits: number, currency: string): MoneyAmount => ({
  minorUnits,
  currency,
  amount: formatAmount(minorUnits, currencyExponent(currency) ?? 2),
});
