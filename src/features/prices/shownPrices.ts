import { priceSummaries, recentDays, type NotedPrice } from '../../domain/parts/priceSummaries.js';
import { moneyAmount } from '../money/moneyAmount.js';
import type { PriceEstimate } from './price.type.js';

/** Prices by currency as the API shows them, the currency with most recent notes first. */
export function shownPrices(notes: readonly NotedPrice[], nowMs: number): PriceEstimate[] {
  const asOf = new Date(nowMs).toISOString();
  return priceSummaries(notes, asOf.slice(0, 10)).map((one) => {
    const money = (minorUnits: number | null) =>
      minorUnits === null ? null : moneyAmount(minorUnits, one.currency);
    return {
      median: money(one.medianMinorUnits),
      lowest: money(one.lowestMinorUnits),
      highest: money(one.highestMinorUnits),
      recentCount: one.recentCount,
      totalCount: one.totalCount,
      newestOn: one.newestOn,
      newestAgeDays: one.newestAgeDays,
      basis: {
        method: `Median price of one over the notes of the last ${recentDays} days; other currencies are not converted.`,
        counted: [
          { what: 'recent price notes', count: one.recentCount },
          { what: 'older price notes', count: one.totalCount - one.recentCount },
        ],
        assumptions: [],
        asOf,
      },
    };
  });
}
