import { medianOf } from './medianOf.js';
import type { SeriesPoint } from './seriesPoint.js';

/** The series in order of time; values taken at one instant count once, as their median. */
export function onePointAnInstant(points: readonly SeriesPoint[]): SeriesPoint[] {
  const byInstant = new Map<number, number[]>();
  for (const { atMs, value } of points) {
    const values = byInstant.get(atMs);
    if (values) values.push(value);
    else byInstant.set(atMs, [value]);
  }
  return [...byInstant]
    .map(([atMs, values]) => ({ atMs, value: medianOf(values) }))
    .sort((left, right) => left.atMs - right.atMs);
}
