import { normalQuantile } from '../estimates/normalQuantile.js';
import type { UncertainAmount } from './uncertainAmount.js';

/** The lognormal with a median and a standard deviation of the logarithm. */
export function lognormalAmount(median: number, logDeviation: number): UncertainAmount {
  const variance = logDeviation ** 2;
  const mean = median * Math.exp(variance / 2);
  return {
    mean,
    variance: mean ** 2 * Math.expm1(variance),
    at: (probability) => median * Math.exp(logDeviation * normalQuantile(probability)),
  };
}
