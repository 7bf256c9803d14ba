const SERIES_BELOW = 3;
const SERIES_TERMS = 60;
const FRACTION_TERMS = 80;

/**
 * Mills' ratio Q(z) / phi(z) of the standard normal distribution: its upper tail over its density.
 * It stays exact far out in the tail, where both parts are too small to be told from 0.
 *
 * Source: Abramowitz and Stegun, Handbook of Mathematical Functions, 26.2.11 (series) and 26.2.14
 * (continued fraction); numbers of the formulas from memory.
 *
 * @param z above -3; below that the ratio is not needed here.
 */
export function millsRatio(z: number): number {
  if (z >= SERIES_BELOW) {
    let fraction = z;
    for (let term = FRACTION_TERMS; term >= 1; term -= 1) fraction = z + term / fraction;
    return 1 / fraction;
  }
  let power = z;
  let sum = z;
  for (let term = 1; term <= SERIES_TERMS; term += 1) {
    power *= (z * z) / (2 * term + 1);
    sum += power;
  }
  return Math.sqrt(Math.PI / 2) * Math.exp((z * z) / 2) - sum;
}
