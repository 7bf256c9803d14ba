import type { ThreePointEstimate } from '../estimates/threePointEstimate.js';

// The most that an estimate may say; scaling must not make a valid one absurd.
const MOST_HOURS = 10_000;

/** An estimate with all three points multiplied, none above 10,000 hours. */
export function scaledEstimate(estimate: ThreePointEstimate, factor: number): ThreePointEstimate {
  const scaled = (hours: number) => Math.min(MOST_HOURS, hours * factor);
  return {
    ...estimate,
    optimisticHours: scaled(estimate.optimisticHours),
    likelyHours: scaled(estimate.likelyHours),
    pessimisticHours: scaled(estimate.pessimisticHours),
  };
}
