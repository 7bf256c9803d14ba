import type { SeriesPoint } from './seriesPoint.js';

/** A reading on its way into a series. */
export interface SeriesReading extends SeriesPoint {
  readonly readingId: string;
  /** Names the instrument once; null: not recorded, which is an instrument of its own. */
  readonly instrument: string | null;
}

/** What `from` shows, times `factor`, is what `to` would have shown. */
export interface InstrumentFactor {
  readonly from: string;
  readonly to: string;
  readonly factor: number;
}

export interface ComparableSeries {
  /** As the instrument of the last reading would have shown them, in order of time. */
  readonly points: readonly SeriesReading[];
  /** How many were converted by a comparison factor. */
  readonly converted: number;
  /** The reading by another instrument, without a factor, that the series begins after. */
  readonly brokenBy: SeriesReading | null;
}

/**
 * The longest run of readings, back from the last, that one instrument took or that a comparison
 * factor makes comparable: a change of instrument is no change of the part.
 */
export function comparableSeries(
  readings: readonly SeriesReading[],
  factors: readonly InstrumentFactor[],
): ComparableSeries {
  const latestFirst = [...readings].sort((left, right) => right.atMs - left.atMs);
  const reference = latestFirst[0]?.instrument ?? null;
  const points: SeriesReading[] = [];
  let converted = 0;
  for (const reading of latestFirst) {
    const factor = factorTo(reference, reading.instrument, factors);
    if (factor === null) return { points: points.reverse(), converted, brokenBy: reading };
    if (reading.instrument !== reference) converted += 1;
    points.push({ ...reading, value: reading.value * factor });
  }
  return { points: points.reverse(), converted, brokenBy: null };
}

/** A factor holds both ways. */
function factorTo(
  reference: string | null,
  instrument: string | null,
  factors: readonly InstrumentFactor[],
): number | null {
  if (instrument === reference) return 1;
  for (const { from, to, factor } of factors) {
    if (from === instrument && to === reference) return factor;
    if (from === reference && to === instrument) return 1 / factor;
  }
  return null;
}
