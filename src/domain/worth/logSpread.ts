/** Spread of prices of one thing where nothing else is known: a third up or down. No source. */
export const usualLogSpread = 0.35;
/** How many notes the usual spread counts for beside those there are. No source. */
const usualWeight = 3;
/** How far prices wander in a year, as a standard deviation of the logarithm. No source. */
const yearlyDrift = 0.1;

/**
 * How uncertain the price of the next one is, as a standard deviation of its logarithm: the spread
 * of the notes, drawn towards the usual one as if that were three more of them; a share more for
 * each note that there is not, by 1 + 1/n; and a tenth for each year since the newest, growing with
 * the root of time as a random walk does. Fewer and older notes never make it narrower.
 *
 * The form is that of a predictive distribution of a normal sample; its three constants are our own
 * choice, no source.
 * @param logs natural logarithms of the prices, at least one
 * @param usual spread taken for the usual one
 */
export function logSpread(
  logs: readonly number[],
  newestAgeDays: number,
  usual = usualLogSpread,
): number {
  const count = logs.length;
  const mean = logs.reduce((sum, log) => sum + log, 0) / count;
  const squares = logs.reduce((sum, log) => sum + (log - mean) ** 2, 0);
  const variance = (squares + usualWeight * usual ** 2) / (count - 1 + usualWeight);
  const years = Math.max(0, newestAgeDays) / 365.25;
  return Math.sqrt(variance * (1 + 1 / count) + yearlyDrift ** 2 * years);
}
