import { YEAR_MS, type TheilSen } from './theilSen.js';

/** Beyond this a date says nothing about a part. */
const FARTHEST_YEARS = 100;

export interface LimitEnds {
  readonly lower: number | null;
  readonly upper: number | null;
}

/** When the line of a trend reaches a limit, and between when and when by Sen's interval. */
export interface LimitCrossing {
  readonly end: 'LOWER' | 'UPPER';
  readonly limit: number;
  /** By the Theil–Sen line. */
  readonly centralMs: number;
  /** By the steepest slope of the interval; null when there is none. */
  readonly earliestMs: number | null;
  /** By the flattest slope; null when that never reaches it within a hundred years. */
  readonly latestMs: number | null;
}

/**
 * Lines of the median and of both ends of the interval, all through the pivot, against the limit
 * that the trend heads for. A limit that the pivot has passed already was reached before it: then
 * the steepest slope gives the latest date.
 * @returns null when no limit lies ahead, or none within a hundred years
 */
export function limitCrossing(line: TheilSen, ends: LimitEnds): LimitCrossing | null {
  const { slopePerYear, interval, pivot } = line;
  const end = slopePerYear < 0 ? 'LOWER' : 'UPPER';
  const limit = slopePerYear < 0 ? ends.lower : ends.upper;
  if (slopePerYear === 0 || limit === null) return null;
  const reachedMs = (slope: number): number | null => {
    const years = (limit - pivot.value) / slope;
    const isTheSameWay = Math.sign(slope) === Math.sign(slopePerYear);
    return isTheSameWay && Math.abs(years) <= FARTHEST_YEARS ? pivot.atMs + years * YEAR_MS : null;
  };
  const centralMs = reachedMs(slopePerYear);
  if (centralMs === null) return null;
  const { lowPerYear, highPerYear } = interval ?? { lowPerYear: 0, highPerYear: 0 };
  const [steepest, flattest] =
    slopePerYear < 0 ? [lowPerYear, highPerYear] : [highPerYear, lowPerYear];
  const isPassed = (limit - pivot.value) / slopePerYear < 0;
  const [earliestMs, latestMs] = isPassed
    ? [reachedMs(flattest), reachedMs(steepest)]
    : [reachedMs(steepest), reachedMs(flattest)];
  return { end, limit, centralMs, earliestMs, latestMs };
}
