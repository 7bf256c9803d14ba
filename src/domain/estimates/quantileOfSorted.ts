/**
 * The quantile of values sorted upwards, linear between neighbours: definition 7 of R. J. Hyndman
 * and Y. Fan, "Sample Quantiles in Statistical Packages", The American Statistician 50(4), 1996.
 *
 * @param sorted at least one value.
 */
export function quantileOfSorted(sorted: Float64Array, probability: number): number {
  const position = (sorted.length - 1) * probability;
  const below = Math.floor(position);
  const low = sorted[below]!;
  const high = sorted[Math.min(below + 1, sorted.length - 1)]!;
  return low + (position - below) * (high - low);
}
