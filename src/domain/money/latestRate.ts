import type { ExchangeRate } from './exchangeRate.js';

/**
 * The newest rate between two currencies, in either direction, that is not of a later day; of two
 * of one day the one in the direction asked for. null when there is none.
 */
export function latestRate(
  rates: readonly ExchangeRate[],
  fromCurrency: string,
  toCurrency: string,
  day: string,
): ExchangeRate | null {
  let best: ExchangeRate | null = null;
  for (const rate of rates) {
    const isForward = rate.fromCurrency === fromCurrency && rate.toCurrency === toCurrency;
    const isAgainst = rate.fromCurrency === toCurrency && rate.toCurrency === fromCurrency;
    if ((!isForward && !isAgainst) || rate.ratedOn > day) continue;
    const isNewer = best === null || rate.ratedOn > best.ratedOn;
    if (isNewer || (isForward && rate.ratedOn === best?.ratedOn)) best = rate;
  }
  return best;
}
