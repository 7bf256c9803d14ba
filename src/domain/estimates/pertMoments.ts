import type { ThreePointEstimate } from './threePointEstimate.js';

export interface PertMoments {
  readonly meanHours: number;
  /** The textbook's ((b - a) / 6)², in square hours; an approximation. */
  readonly classicVarianceHours: number;
  /** The variance of the PERT beta itself, (mean - a)(b - mean) / 7, in square hours. */
  readonly exactVarianceHours: number;
}

/**
 * Mean and variance of a three-point estimate (a, m, b): mean (a + 4m + b) / 6.
 *
 * Source: the programme evaluation and review technique, Operations Research 7(5), 1959, p. 646-669
 * (mean, classic variance); the exact variance follows from the beta with alpha + beta = 6.
 */
export function pertMoments(estimate: ThreePointEstimate): PertMoments {
  const { optimisticHours: a, likelyHours: m, pessimisticHours: b } = estimate;
  const meanHours = (a + 4 * m + b) / 6;
  return {
    meanHours,
    classicVarianceHours: ((b - a) / 6) ** 2,
    exactVarianceHours: ((meanHours - a) * (b - meanHours)) / 7,
  };
}
