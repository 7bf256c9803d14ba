import type { HoursLeft } from '../estimates/hoursLeft.js';
import { normalCumulative } from '../estimates/normalCumulative.js';

const ORDERS = 16;
const REACH = 7;
const STEP = 0.125;

/**
 * The variance, in square hours, of a sum of hours tied by one Gaussian factor, without trials.
 *
 * Each quantile, as a function of a normal score, is a series of Hermite polynomials; the
 * covariance of two is the sum over their orders k of r^k times both coefficients (Mehler's
 * expansion of the bivariate normal density). Sixteen orders, by the trapezoid rule.
 *
 * @param correlation r of the scores, from 0 to 1.
 */
export function sumVariance(parts: readonly HoursLeft[], correlation: number): number {
  const apart = parts.reduce((sum, { varianceHours }) => sum + varianceHours, 0);
  if (correlation === 0) return apart;
  const sums = new Float64Array(ORDERS + 1);
  const squares = new Float64Array(ORDERS + 1);
  for (const part of parts) {
    if (part.varianceHours === 0) continue;
    hermiteCoefficients(part).forEach((coefficient, order) => {
      sums[order]! += coefficient;
      squares[order]! += coefficient ** 2;
    });
  }
  let between = 0;
  for (let order = 1; order <= ORDERS; order += 1) {
    between += correlation ** order * (sums[order]! ** 2 - squares[order]!);
  }
  return apart + between;
}

/** E[hours He_k(Z)] / sqrt(k!) for k from 0; the polynomials by their own recurrence. */
function hermiteCoefficients(part: HoursLeft): Float64Array {
  const coefficients = new Float64Array(ORDERS + 1);
  for (let z = -REACH; z <= REACH; z += STEP) {
    const weight = (STEP * Math.exp((-z * z) / 2)) / Math.sqrt(2 * Math.PI);
    const hours = part.hoursAt(normalCumulative(z)) * weight;
    let before = 0;
    let polynomial = 1;
    for (let order = 0; order <= ORDERS; order += 1) {
      coefficients[order]! += hours * polynomial;
      const next = (z * polynomial - Math.sqrt(order) * before) / Math.sqrt(order + 1);
      before = polynomial;
      polynomial = next;
    }
  }
  return coefficients;
}
