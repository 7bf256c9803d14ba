/** A price seen or paid somewhere on a day. */
export interface NotedPrice {
  /** For `quantity` of them together. */
  readonly amountMinorUnits: number;
  readonly currency: string;
  readonly quantity: number;
  /** ISO 8601 date. */
  readonly notedOn: string;
}

/** What one costs in one currency, and how much that rests on. */
export interface PriceSummary {
  readonly currency: string;
  /** Median price of one in minor units, over the recent notes; null when none is recent. */
  readonly medianMinorUnits: number | null;
  readonly lowestMinorUnits: number | null;
  readonly highestMinorUnits: number | null;
  readonly recentCount: number;
  readonly totalCount: number;
  readonly newestOn: string;
  /** Days since the newest note: together with the counts, how scarce it is. */
  readonly newestAgeDays: number;
}

/** Older notes count as history, not as a price. */
export const recentDays = 3 * 365;

/**
 * Prices by currency, the one with most recent notes first; nothing is converted. The median of an
 * even number is the mean of the middle two, rounded half up to a minor unit.
 */
export function priceSummaries(notes: readonly NotedPrice[], today: string): PriceSummary[] {
  const currencies = [...new Set(notes.map(({ currency }) => currency))].sort();
  return currencies
    .map((currency) =>
      summary(
        currency,
        notes.filter((note) => note.currency === currency),
        today,
      ),
    )
    .sort((one, other) => other.recentCount - one.recentCount || other.totalCount - one.totalCount);
}

function summary(currency: string, notes: readonly NotedPrice[], today: string): PriceSummary {
  const age = (day: string): number =>
    Math.round((Date.parse(today) - Date.parse(day)) / 86_400_000);
  const prices = notes
    .filter(({ notedOn }) => age(notedOn) <= recentDays)
    .map(({ amountMinorUnits, quantity }) => amountMinorUnits / quantity)
    .sort((one, other) => one - other);
  const newestOn =
    notes
      .map(({ notedOn }) => notedOn)
      .sort()
      .at(-1) ?? today;
  const rounded = (price: number | undefined): number | null =>
    price === undefined ? null : Math.floor(price + 0.5);
  return {
    currency,
    medianMinorUnits: rounded(medianOf(prices)),
    lowestMinorUnits: rounded(prices[0]),
    highestMinorUnits: rounded(prices.at(-1)),
    recentCount: prices.length,
    totalCount: notes.length,
    newestOn,
    newestAgeDays: Math.max(0, age(newestOn)),
  };
}

function medianOf(sorted: readonly number[]): number | undefined {
  const [below, above] = [sorted[(sorted.length - 1) >> 1], sorted[sorted.length >> 1]];
  return below === undefined || above === undefined ? undefined : (below + above) / 2;
}
