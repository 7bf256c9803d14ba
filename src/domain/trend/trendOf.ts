import { limitCrossing, type LimitCrossing, type LimitEnds } from './limitCrossing.js';
import { mannKendall, type MannKendall } from './mannKendall.js';
import { onePointAnInstant } from './onePointAnInstant.js';
import type { SeriesPoint } from './seriesPoint.js';
import { theilSen, YEAR_MS, type TheilSen } from './theilSen.js';

/**
 * Of fewer instants no order is rare enough: even the most extreme S of four values comes up one
 * time in twelve (Gilbert 1987, table A18), and Sen's 95 % interval has no ranks to stand on.
 */
export const FEWEST_INSTANTS = 5;

/** A trend is claimed when chance alone gives as much in at most one series of twenty. */
const LARGEST_PROBABILITY = 0.05;

/** A limit that is reached within this time of the last reading makes a part suspect. */
const SOON_YEARS = 1;

export type Trend =
  | { readonly kind: 'TOO_FEW'; readonly instants: number; readonly missing: number }
  | {
      readonly kind: 'NONE' | 'RISING' | 'FALLING';
      readonly instants: number;
      readonly test: MannKendall;
      readonly line: TheilSen;
      /** Null without a trend, and when no limit lies ahead. */
      readonly crossing: LimitCrossing | null;
      /** The limit is reached within a year of the last reading. */
      readonly isLimitNear: boolean;
    };

/** What a series says: whether it moves, how fast, and when it reaches its limit. */
export function trendOf(points: readonly SeriesPoint[], ends: LimitEnds): Trend {
  const series = onePointAnInstant(points);
  const instants = series.length;
  const last = series.at(-1);
  if (instants < FEWEST_INSTANTS || last === undefined) {
    return { kind: 'TOO_FEW', instants, missing: FEWEST_INSTANTS - instants };
  }
  const test = mannKendall(series.map(({ value }) => value));
  const line = theilSen(series, test.variance);
  const moves = test.probability <= LARGEST_PROBABILITY && line.slopePerYear !== 0;
  const kind = !moves ? 'NONE' : line.slopePerYear > 0 ? 'RISING' : 'FALLING';
  const crossing = moves ? limitCrossing(line, ends) : null;
  const isLimitNear = crossing !== null && crossing.centralMs <= last.atMs + SOON_YEARS * YEAR_MS;
  return { kind, instants, test, line, crossing, isLimitNear };
}
