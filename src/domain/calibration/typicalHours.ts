import { remainingHours } from '../estimates/remainingHours.js';
import type { ThreePointEstimate } from '../estimates/threePointEstimate.js';

const POINTS = 64;

/**
 * The geometric mean of an estimate's own distribution: what actual hours are compared with, so
 * that honest estimates have ratios of 1 on the (geometric) average. Against the plain mean they
 * would seem too high, as a skewed task mostly takes less than its mean.
 */
export function typicalHours(estimate: ThreePointEstimate): number {
  const whole = remainingHours({ state: 'NOT_STARTED', estimate, spentHours: 0 });
  let logs = 0;
  for (let point = 0; point < POINTS; point += 1)
    logs += Math.log(whole.hoursAt((point + 0.5) / POINTS));
  return Math.exp(logs / POINTS);
}
