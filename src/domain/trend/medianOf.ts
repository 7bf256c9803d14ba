/** The middle of some numbers, or the mean of the two in the middle. @throws RangeError of none */
export function medianOf(numbers: readonly number[]): number {
  const sorted = [...numbers].sort((left, right) => left - right);
  const middle = sorted.length / 2;
  const upper = sorted[Math.floor(middle)];
  if (upper === undefined) throw new RangeError('There is no median of nothing.');
  const lower = Number.isInteger(middle) ? sorted[middle - 1] : upper;
  return ((lower ?? upper) + upper) / 2;
}
