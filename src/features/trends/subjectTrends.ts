import {
  comparableSeries,
  type ComparableSeries,
  type SeriesReading,
} from '../../domain/trend/comparableSeries.js';
import { trendOf, type Trend } from '../../domain/trend/trendOf.js';
import { nameKey } from '../../domain/nameKey.js';
import { groupedBy } from '../../db/groupedBy.js';
import { judgeReading, type JudgeableReading } from '../readings/judgeReading.js';
import type { KeptLimit } from '../readings/limitsOfSubjects.reads.js';
import type { ReadingTier } from '../readings/readingTier.js';
import { convertUnit } from '../readings/ucum.js';
import type { KeptComparison } from './instrumentComparison.reads.js';

export const trendReadingColumns = `reading.id AS "id", reading.quantity AS "quantity",
  reading.value AS "value", reading.unit AS "unit", reading.tier AS "tier",
  reading.instrument AS "instrument", reading.taken_at AS "takenAt"`;

/** A reading as it may enter a series. */
export interface TrendReading extends JudgeableReading {
  id: string;
  instrument: string | null;
  takenAt: string;
}

/** One quantity of one component or item, on one tier, over time. */
export interface SubjectTrend {
  quantity: string;
  tier: ReadingTier;
  unit: string;
  /** In `unit`; null where no limit has such an end. */
  lower: string | null;
  upper: string | null;
  series: ComparableSeries;
  /** Readings in a unit that does not measure the same. */
  leftOut: number;
  trend: Trend;
}

/** The series of one component or item, each quantity on each tier by itself. */
export function subjectTrends(
  readings: readonly TrendReading[],
  limits: readonly KeptLimit[],
  comparisons: readonly KeptComparison[],
): SubjectTrend[] {
  const inOrder = [...readings].sort((left, right) =>
    left.takenAt + left.id < right.takenAt + right.id ? -1 : 1,
  );
  const series = groupedBy(inOrder, ({ quantity, tier }) =>
    JSON.stringify([nameKey(quantity), tier]),
  );
  return [...series.values()].flatMap((some) => trendOfSeries(some, limits, comparisons) ?? []);
}

function trendOfSeries(
  readings: readonly TrendReading[],
  limits: readonly KeptLimit[],
  comparisons: readonly KeptComparison[],
): SubjectTrend | null {
  const last = readings.at(-1);
  if (!last) return null;
  const { quantity, tier } = last;
  const { limit } = judgeReading(last, limits);
  const unit = limit?.unit ?? last.unit;
  const comparable = readings.flatMap((reading): SeriesReading[] => {
    const value = convertUnit(reading.value, reading.unit, unit);
    if (value === null) return [];
    const instrument = reading.instrument === null ? null : nameKey(reading.instrument);
    const atMs = Date.parse(reading.takenAt);
    return [{ readingId: reading.id, atMs, value: Number(value), instrument }];
  });
  const factors = comparisons
    .filter((comparison) => nameKey(comparison.quantity) === nameKey(quantity))
    .map(({ fromInstrument, toInstrument, factor }) => ({
      from: nameKey(fromInstrument),
      to: nameKey(toInstrument),
      factor: Number(factor),
    }));
  const series = comparableSeries(comparable, factors);
  const [lower, upper] = [limit?.lower ?? null, limit?.upper ?? null];
  const trend = trendOf(series.points, {
    lower: lower === null ? null : Number(lower),
    upper: upper === null ? null : Number(upper),
  });
  const leftOut = readings.length - comparable.length;
  return { quantity, tier, unit, lower, upper, series, leftOut, trend };
}
