/**
 * Probability that S is at least so large for n values in random order without ties: the orders with
 * so few inversions, counted out. S is the number of pairs less twice the inversions.
 * Source of the recursion: M. G. Kendall, Rank Correlation Methods, chapter 5 (from memory).
 * @param n up to 20, where the counts are still exact
 */
export function kendallTail(n: number, s: number): number {
  if (!Number.isInteger(n) || n < 1 || n > 20) throw new RangeError('n must be from 1 to 20.');
  let orders = [1];
  for (let size = 2; size <= n; size += 1) {
    const longest = (size * (size - 1)) / 2;
    orders = Array.from({ length: longest + 1 }, (_, inversions) =>
      orders
        .slice(Math.max(0, inversions - size + 1), inversions + 1)
        .reduce((sum, count) => sum + count, 0),
    );
  }
  const pairs = (n * (n - 1)) / 2;
  const all = orders.reduce((sum, count) => sum + count, 0);
  const extreme = orders
    .filter((_, inversions) => pairs - 2 * inversions >= s)
    .reduce((sum, count) => sum + count, 0);
  return extreme / all;
}
