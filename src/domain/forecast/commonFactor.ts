import { normalCumulative } from '../estimates/normalCumulative.js';
import { normalQuantile } from '../estimates/normalQuantile.js';

// The generator's own grid: a probability never reaches 0 or 1.
const LEAST = 2 ** -33;

/** One standard normal number a trial: how bad the set turns out to be all over. */
export function commonFactor(uniforms: Float64Array): Float64Array {
  return uniforms.map(normalQuantile);
}

/**
 * Ties a task's probabilities, one a trial, to the factor that all tasks of the project share, in
 * place: a Gaussian copula with one factor, u becomes Phi(sqrt(r) common + sqrt(1 - r) Phi^-1(u)).
 *
 * @param correlation r, from 0 to 1: between the normal scores of any two tasks.
 */
export function tieToCommonFactor(
  uniforms: Float64Array,
  common: Float64Array,
  correlation: number,
): void {
  const shared = Math.sqrt(correlation);
  const own = Math.sqrt(1 - correlation);
  for (let trial = 0; trial < uniforms.length; trial += 1) {
    const score = shared * common[trial]! + own * normalQuantile(uniforms[trial]!);
    uniforms[trial] = Math.min(1 - LEAST, Math.max(LEAST, normalCumulative(score)));
  }
}
