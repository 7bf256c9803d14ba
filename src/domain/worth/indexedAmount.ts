import { parseDecimal } from '../decimal/parseDecimal.js';
import { roundedQuotient } from '../decimal/roundedQuotient.js';

/** The index of a year (`2024`) or of a month (`2024-06`), an exact decimal above zero. */
export interface IndexPoint {
  readonly period: string;
  readonly value: string;
}

export interface IndexedAmount {
  readonly minorUnits: number;
  /** The points that were used. */
  readonly from: IndexPoint;
  readonly to: IndexPoint;
}

/**
 * The point of a day: its month's, else its year's, else the last one before it; null when the
 * index begins after it. (A yearly average counts as known from the start of its year.)
 */
export function indexPointAt(points: readonly IndexPoint[], day: string): IndexPoint | null {
  const exact = points.find(({ period }) => period === day.slice(0, 7));
  const ofYear = points.find(({ period }) => period === day.slice(0, 4));
  if (exact ?? ofYear) return exact ?? ofYear ?? null;
  let last: IndexPoint | null = null;
  for (const point of points) {
    if (point.period <= day && (last === null || point.period > last.period)) last = point;
  }
  return last;
}

/**
 * An amount of one day in the money of another: amount × index of the one ÷ index of the other,
 * exact until the one rounding to the nearest minor unit. null when the index does not reach back.
 *
 * Source: the rule of the United States Bureau of Labor Statistics for its consumer price index.
 */
export function indexedAmount(
  minorUnits: number,
  fromDay: string,
  toDay: string,
  points: readonly IndexPoint[],
): IndexedAmount | null {
  const [from, to] = [indexPointAt(points, fromDay), indexPointAt(points, toDay)];
  if (from === null || to === null) return null;
  const [below, above] = [parseDecimal(from.value), parseDecimal(to.value)];
  if (below === null || above === null || below.coefficient <= 0n || above.coefficient <= 0n) {
    throw new RangeError('A price index is a decimal number above zero.');
  }
  const indexed = roundedQuotient(
    BigInt(minorUnits) * above.coefficient * 10n ** BigInt(below.decimals),
    below.coefficient * 10n ** BigInt(above.decimals),
  );
  return { minorUnits: Number(indexed), from, to };
}
