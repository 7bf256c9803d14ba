import { lognormalParameters } from './lognormalParameters.js';
import { millsRatio } from './millsRatio.js';
import type { SeededRandom } from './seededRandom.js';

export interface LognormalResidual {
  readonly meanHours: number;
  /** Square hours. */
  readonly varianceHours: number;
  draw(random: SeededRandom): number;
}

/**
 * What is left of a lognormal number of hours, given that it exceeds the hours already spent.
 *
 * Moments: E[X^k | X > s] = s^k R(z - k sigma) / R(z), with z = (ln s - mu) / sigma and R Mills'
 * ratio; this follows from the lognormal's partial moments. Draws are exact: a normal tail by
 * exponential rejection (Statistics and Computing 5, 1995, p. 121-125; from memory).
 *
 * @param spentHours not below the mean, so that z is positive.
 */
export function lognormalResidual(
  meanHours: number,
  coefficientOfVariation: number,
  spentHours: number,
): LognormalResidual {
  const { mu, sigma } = lognormalParameters(meanHours, coefficientOfVariation);
  const z = (Math.log(spentHours) - mu) / sigma;
  const tail = millsRatio(z);
  const firstMoment = millsRatio(z - sigma) / tail;
  const secondMoment = millsRatio(z - 2 * sigma) / tail;
  const rate = (z + Math.sqrt(z * z + 4)) / 2;
  return {
    meanHours: spentHours * (firstMoment - 1),
    varianceHours: spentHours ** 2 * (secondMoment - firstMoment ** 2),
    draw(random) {
      for (;;) {
        const beyond = -Math.log(random.nextUniform()) / rate;
        if (random.nextUniform() <= Math.exp(-((z + beyond - rate) ** 2) / 2)) {
          return spentHours * Math.expm1(sigma * beyond);
        }
      }
    },
  };
}
