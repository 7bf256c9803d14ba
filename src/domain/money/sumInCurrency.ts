import { addMoney } from './addMoney.js';
import { convertMoney } from './convertMoney.js';
import type { ExchangeRate } from './exchangeRate.js';
import { latestRate } from './latestRate.js';
import type { Money } from './money.js';
import { sumByCurrency } from './sumByCurrency.js';

export type ConvertedSum =
  | { readonly kind: 'SUM'; readonly total: Money; readonly usedRates: readonly ExchangeRate[] }
  | {
      readonly kind: 'REFUSED';
      /** Currencies that there is no rate for. */
      readonly missing: readonly string[];
      readonly why: string;
    };

/** What is known of rates, and the day for which a sum is made. */
export interface RateTable {
  readonly rates: readonly ExchangeRate[];
  readonly day: string;
  /** Decimals of a currency by ISO 4217. */
  readonly exponentOf: (currency: string) => number;
}

/**
 * A sum across currencies. Each currency is added up first and converted once, by the newest rate
 * of the table up to the day, which is named in the answer; without one the sum is refused.
 */
export function sumInCurrency(
  amounts: Iterable<Money>,
  currency: string,
  { rates, day, exponentOf }: RateTable,
): ConvertedSum {
  let total: Money = { minorUnits: 0, currency };
  const usedRates: ExchangeRate[] = [];
  const missing: string[] = [];
  for (const sum of sumByCurrency(amounts)) {
    if (sum.currency === currency) {
      total = addMoney(total, sum);
      continue;
    }
    const rate = latestRate(rates, sum.currency, currency, day);
    if (rate === null) {
      missing.push(sum.currency);
      continue;
    }
    usedRates.push(rate);
    total = addMoney(total, convertMoney(sum, rate, exponentOf));
  }
  if (missing.length === 0) return { kind: 'SUM', total, usedRates };
  const why = `There is no rate between ${missing.join(', ')} and ${currency} up to ${day}: enter one, and ask again.`;
  return { kind: 'REFUSED', missing, why };
}
