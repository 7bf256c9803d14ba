/** One value of a series, in the unit of the series. */
export interface SeriesPoint {
  readonly atMs: number;
  readonly value: number;
}
