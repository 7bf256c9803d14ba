import { apportion } from './apportion.js';
import { lotWeights, type LotSpread } from './lotWeights.js';
import type { Money } from './money.js';
import { sumByCurrency } from './sumByCurrency.js';

export interface Lot extends LotSpread {
  readonly price: Money;
  /** Carriage, premium, duty: each in its own currency. */
  readonly extraCosts: readonly Money[];
}

/** What falls to one line of a lot. */
export interface LotShare {
  readonly price: Money;
  /** One amount a currency, by currency code; empty when the lot had no extra costs. */
  readonly extras: readonly Money[];
  /** Price and extras together, one amount a currency. */
  readonly totals: readonly Money[];
}

/**
 * What each line of a lot cost: the price, and the extra costs of each currency added up first, are
 * spread by the same weights to the last minor unit, so that the parts sum to the whole. Nothing is
 * converted.
 * @returns one share a line, in the order of the lines
 * @throws RangeError as `apportion`; `lotProblems` tells all faults beforehand
 */
export function lotShares(lot: Lot): LotShare[] {
  if (lot.lines.length === 0) return [];
  const weights = lotWeights(lot);
  const spread = ({ minorUnits, currency }: Money): Money[] =>
    apportion(minorUnits, weights).map((part) => ({ minorUnits: part, currency }));
  const prices = spread(lot.price);
  const extras = sumByCurrency(lot.extraCosts).map(spread);
  return prices.map((price, line) => {
    const own = extras.map((parts) => parts[line] as Money);
    return { price, extras: own, totals: sumByCurrency([price, ...own]) };
  });
}
