import type { HoursLeft } from './hoursLeft.js';
import { lognormalParameters, type LognormalParameters } from './lognormalParameters.js';
import { millsRatio } from './millsRatio.js';
import { normalQuantile } from './normalQuantile.js';
import { normalTail } from './normalTail.js';

/** From here on the tail is too small a number to be divided, and Mills' ratio takes its place. */
const FAR_OUT = 2;
/** From here on the tail is too small a number to be inverted. */
const VERY_FAR_OUT = 30;

/**
 * What is left of a lognormal number of hours, given that it exceeds the hours already spent.
 *
 * Moments: E[X^k | X > s] = s^k R(z - k sigma) / R(z), with z = (ln s - mu) / sigma and R Mills'
 * ratio; this follows from the lognormal's partial moments.
 */
export function lognormalResidual(
  meanHours: number,
  coefficientOfVariation: number,
  spentHours: number,
): HoursLeft {
  const parameters = lognormalParameters(meanHours, coefficientOfVariation);
  const { mu, sigma } = parameters;
  if (spentHours === 0) {
    return {
      meanHours,
      varianceHours: (meanHours * coefficientOfVariation) ** 2,
      hoursAt: (probability) => Math.exp(mu + sigma * normalQuantile(probability)),
    };
  }
  const z = (Math.log(spentHours) - mu) / sigma;
  const { first, second } = moments(parameters, meanHours, spentHours, z);
  return {
    meanHours: first - spentHours,
    varianceHours: Math.max(0, second - first ** 2),
    hoursAt: (probability) => spentHours * Math.expm1(sigma * beyond(z, probability)),
  };
}

function moments(
  { sigma }: LognormalParameters,
  meanHours: number,
  spentHours: number,
  z: number,
): { first: number; second: number } {
  if (z > FAR_OUT) {
    const tail = millsRatio(z);
    return {
      first: (spentHours * millsRatio(z - sigma)) / tail,
      second: (spentHours ** 2 * millsRatio(z - 2 * sigma)) / tail,
    };
  }
  const tail = normalTail(z);
  return {
    first: (meanHours * normalTail(z - sigma)) / tail,
    second: (meanHours ** 2 * Math.exp(sigma ** 2) * normalTail(z - 2 * sigma)) / tail,
  };
}

/** How far above z a normal variable lies, given that it does, at a probability. */
function beyond(z: number, probability: number): number {
  if (z < VERY_FAR_OUT) {
    const above = normalTail(z) * (1 - probability);
    // The tail inverts with a rounding error that must not take it below where it starts.
    return Math.max(Number.EPSILON, -normalQuantile(above) - z);
  }
  // There the tail is exponential in all but name, of the rate of its own density.
  return -Math.log1p(-probability) * millsRatio(z);
}
