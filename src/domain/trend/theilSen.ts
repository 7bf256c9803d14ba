import { medianOf } from './medianOf.js';
import type { SeriesPoint } from './seriesPoint.js';

/** 0.975 quantile of the standard normal distribution, for a two-sided 95 % interval. */
const NORMAL_QUANTILE_975 = 1.959963984540054;

/**
 * The outermost slopes of five points hold the slope in 98 % of cases (two-sided tail of S = ±10:
 * 2 of 120 orders), those of four in 92 % only. So from five on ranks are kept within the slopes.
 */
const FEWEST_POINTS = 5;

/** A year of 365.25 days. */
export const YEAR_MS = 31_557_600_000;

export interface TheilSen {
  /** Median of the slopes of all pairs, a year. */
  readonly slopePerYear: number;
  /** Sen's 95 % interval, a year; null of fewer than five points. */
  readonly interval: { readonly lowPerYear: number; readonly highPerYear: number } | null;
  /** The line goes through the medians of time and value (Conover). */
  readonly pivot: SeriesPoint;
}

/**
 * Theil–Sen line with Sen's interval. The ranks of the interval's ends fall between two slopes; the
 * slope there is interpolated, as Gilbert does.
 * Source: R. O. Gilbert, Statistical Methods for Environmental Pollution Monitoring (1987), 16.5;
 * USGS Techniques and Methods 4-A7 (2006) for the line; checked in tests/published/trend.test.ts.
 * @param points two or more, no two at one instant
 * @param variance of S, as `mannKendall` gives it
 */
export function theilSen(points: readonly SeriesPoint[], variance: number): TheilSen {
  const slopes = points
    .flatMap((later, index) =>
      points
        .slice(0, index)
        .map((earlier) => ((later.value - earlier.value) * YEAR_MS) / (later.atMs - earlier.atMs)),
    )
    .sort((left, right) => left - right);
  const halfWidth = NORMAL_QUANTILE_975 * Math.sqrt(variance);
  const pairs = slopes.length;
  const low = atRank(slopes, Math.max(1, (pairs - halfWidth) / 2));
  const high = atRank(slopes, Math.min(pairs, (pairs + halfWidth) / 2 + 1));
  return {
    slopePerYear: medianOf(slopes),
    interval:
      points.length < FEWEST_POINTS || low === null || high === null
        ? null
        : { lowPerYear: low, highPerYear: high },
    pivot: {
      atMs: medianOf(points.map(({ atMs }) => atMs)),
      value: medianOf(points.map(({ value }) => value)),
    },
  };
}

/** The value at a rank counted from 1, between two of them in proportion; null outside. */
function atRank(sorted: readonly number[], rank: number): number | null {
  const below = sorted[Math.floor(rank) - 1];
  const above = sorted[Math.ceil(rank) - 1];
  if (below === undefined || above === undefined) return null;
  return below + (above - below) * (rank - Math.floor(rank));
}
