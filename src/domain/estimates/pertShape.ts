import type { ThreePointEstimate } from './threePointEstimate.js';

/** The two shape parameters of a beta distribution. */
export interface BetaShape {
  readonly alpha: number;
  readonly beta: number;
}

/**
 * The shape of the PERT beta of an estimate: alpha = 1 + 4(m - a)/(b - a), beta = 6 - alpha.
 * null when optimistic and pessimistic are equal: a point, which has no shape.
 */
export function pertShape(estimate: ThreePointEstimate): BetaShape | null {
  const { optimisticHours: a, likelyHours: m, pessimisticHours: b } = estimate;
  if (a === b) return null;
  return { alpha: 1 + (4 * (m - a)) / (b - a), beta: 1 + (4 * (b - m)) / (b - a) };
}
