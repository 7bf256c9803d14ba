import { parseDecimal } from '../decimal/parseDecimal.js';
import { roundedQuotient } from '../decimal/roundedQuotient.js';
import type { ExchangeRate } from './exchangeRate.js';
import type { Money } from './money.js';

/**
 * An amount in the other currency of a named rate: multiplied by the rate in its direction, divided
 * by it against its direction, never multiplied by a rounded inverse. Exact until the one rounding
 * at the end, to the nearest minor unit, half away from zero.
 *
 * Source: Council Regulation (EC) No 1103/97, articles 4 and 5; checked in
 * tests/published/currency-conversion.test.ts.
 * @param exponentOf decimals of a currency by ISO 4217
 * @throws RangeError when the rate is not between these currencies, or the result cannot be kept
 */
export function convertMoney(
  amount: Money,
  rate: ExchangeRate,
  exponentOf: (currency: string) => number,
): Money {
  const isForward = amount.currency === rate.fromCurrency;
  if (!isForward && amount.currency !== rate.toCurrency) {
    throw new RangeError(
      `A rate between ${rate.fromCurrency} and ${rate.toCurrency} converts no ${amount.currency}.`,
    );
  }
  const currency = isForward ? rate.toCurrency : rate.fromCurrency;
  const factor = parseDecimal(rate.rate);
  if (factor === null || factor.coefficient <= 0n) {
    throw new RangeError(`“${rate.rate}” is not a rate: give a decimal above zero.`);
  }
  const scale = 10n ** BigInt(factor.decimals);
  const [times, by] = isForward ? [factor.coefficient, scale] : [scale, factor.coefficient];
  const minorUnits = Number(
    roundedQuotient(
      BigInt(amount.minorUnits) * times * 10n ** BigInt(exponentOf(currency)),
      by * 10n ** BigInt(exponentOf(amount.currency)),
    ),
  );
  if (!Number.isSafeInteger(minorUnits)) {
    throw new RangeError(`The amount in ${currency} is too large to be kept exactly.`);
  }
  return { minorUnits, currency };
}
