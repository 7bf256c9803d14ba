import type { HoursLeft } from './hoursLeft.js';
import type { ThreePointEstimate } from './threePointEstimate.js';

/**
 * What is left of a triangular number of hours, given that it exceeds the hours already spent.
 * Mean and variance by integrating the chance to exceed x: E = ∫ S, E² = 2 ∫ (x - s) S, over S(s).
 *
 * @param spentHours below the pessimistic figure, which is above the optimistic one.
 */
export function triangularLeft(estimate: ThreePointEstimate, spentHours: number): HoursLeft {
  const { optimisticHours: a, likelyHours: m, pessimisticHours: b } = estimate;
  const start = Math.max(a, spentHours);
  const sureHours = start - spentHours;
  const rising = (b - a) * (m - a);
  const falling = (b - a) * (b - m);
  // How far the exceeding part reaches from its start, before and after the likely figure.
  const before = Math.max(0, m - start);
  const after = b - Math.max(m, start);
  const reached = start - a;
  const chance = start < m ? 1 - reached ** 2 / rising : after ** 2 / falling;

  const fallsBy = (power: number) =>
    before === 0
      ? 0
      : before ** power / power -
        (reached ** 2 * (before ** power / power) +
          2 * reached * (before ** (power + 1) / (power + 1)) +
          before ** (power + 2) / (power + 2)) /
          rising;
  const tailOnce = after === 0 ? 0 : after ** 3 / (3 * falling);
  const tailTwice =
    after === 0 ? 0 : (before * after ** 3) / (3 * falling) + after ** 4 / (12 * falling);
  const mean = (fallsBy(1) + tailOnce) / chance;
  const square = (2 * (fallsBy(2) + tailTwice)) / chance;
  return {
    meanHours: sureHours + mean,
    varianceHours: Math.max(0, square - mean ** 2),
    hoursAt(probability) {
      const exceeding = (1 - probability) * chance;
      if (exceeding * (b - a) <= b - m) {
        // Measured from the pessimistic end: near it a difference of two large numbers is nothing.
        return sureHours + (b - start) - Math.sqrt(exceeding * falling);
      }
      const risen = probability * chance * rising;
      return sureHours + risen / (Math.sqrt(reached ** 2 + risen) + reached);
    },
  };
}
