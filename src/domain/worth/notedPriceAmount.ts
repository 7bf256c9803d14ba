import { priceSummaries, recentDays, type NotedPrice } from '../parts/priceSummaries.js';
import { logSpread } from './logSpread.js';
import { lognormalAmount } from './lognormalAmount.js';
import { certainAmount, type UncertainAmount } from './uncertainAmount.js';

/** What one costs by the notes, in one currency, as a distribution. */
export interface NotedPriceAmount {
  readonly amount: UncertainAmount;
  readonly currency: string;
  readonly noteCount: number;
  readonly newestOn: string;
  /** No note is recent: the price rests on old ones, and is the more uncertain. */
  readonly isOld: boolean;
}

/**
 * What one will cost by the notes of one currency, the one with most recent notes: a lognormal
 * whose median is the median of the recent notes (of all of them where none is recent) and whose
 * spread is `logSpread`. null when nothing was noted.
 */
export function notedPriceAmount(
  notes: readonly NotedPrice[],
  today: string,
): NotedPriceAmount | null {
  const [summary] = priceSummaries(notes, today);
  if (summary === undefined) return null;
  const { currency, newestOn, newestAgeDays, recentCount } = summary;
  const oldest = new Date(Date.parse(today) - recentDays * 86_400_000).toISOString().slice(0, 10);
  const prices = notes
    .filter((note) => note.currency === currency)
    .filter(({ notedOn }) => recentCount === 0 || notedOn >= oldest)
    .map(({ amountMinorUnits, quantity }) => amountMinorUnits / quantity)
    .sort((one, other) => one - other);
  const positive = prices.filter((price) => price > 0);
  const low = prices[(prices.length - 1) >> 1] ?? 0;
  const median = (low + (prices[prices.length >> 1] ?? 0)) / 2;
  const amount =
    median > 0 && positive.length > 0
      ? lognormalAmount(median, logSpread(positive.map(Math.log), newestAgeDays))
      : certainAmount(0);
  return { amount, currency, noteCount: prices.length, newestOn, isOld: recentCount === 0 };
}
