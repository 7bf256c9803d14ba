import { millsRatio } from './millsRatio.js';

const HALF_LOG_TWO_PI = Math.log(2 * Math.PI) / 2;

/** The chance that a standard normal variable exceeds z; it underflows to 0 beyond z = 38. */
export function normalTail(z: number): number {
  if (z < 0) return 1 - normalTail(-z);
  return millsRatio(z) * Math.exp((-z * z) / 2 - HALF_LOG_TWO_PI);
}
