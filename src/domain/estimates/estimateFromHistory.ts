import { quantileOfSorted } from './quantileOfSorted.js';
import type { ThreePointEstimate } from './threePointEstimate.js';

/** Below this the least and the most that were seen say little about the spread. Our own choice. */
const enoughToKnowTheSpread = 3;

/**
 * A three-point estimate from what the same task took before: the median for the likely figure, the
 * least and the most for the ends. With fewer than three the ends reach as far from the median, in
 * proportion, as the template's do, if that is further: one fortunate evening is no certainty.
 * Common practice, no source.
 * @param workedHours above 0, in any order; empty: the template's own figures hold.
 */
export function estimateFromHistory(
  template: ThreePointEstimate,
  workedHours: readonly number[],
): ThreePointEstimate {
  if (workedHours.length === 0) return template;
  const sorted = Float64Array.from(workedHours).sort();
  const likelyHours = quantileOfSorted(sorted, 0.5);
  const least = sorted[0] ?? likelyHours;
  const most = sorted.at(-1) ?? likelyHours;
  if (sorted.length >= enoughToKnowTheSpread) {
    return { optimisticHours: least, likelyHours, pessimisticHours: most };
  }
  const scale = likelyHours / template.likelyHours;
  return {
    optimisticHours: Math.min(least, template.optimisticHours * scale),
    likelyHours,
    pessimisticHours: Math.max(most, template.pessimisticHours * scale),
  };
}
