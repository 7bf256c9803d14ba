import type { ThreePointEstimate } from '../../domain/estimates/threePointEstimate.js';

/** An estimate in whole minutes, each at least one, in order. */
export function minutesOf(estimate: ThreePointEstimate) {
  const minutes = (hours: number) => Math.max(1, Math.round(hours * 60));
  return {
    optimisticMinutes: minutes(estimate.optimisticHours),
    likelyMinutes: minutes(estimate.likelyHours),
    pessimisticMinutes: minutes(estimate.pessimisticHours),
  };
}
