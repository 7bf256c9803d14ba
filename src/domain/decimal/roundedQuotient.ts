/**
 * The whole number nearest to a quotient; exactly between two, the one farther from zero (for
 * amounts above zero: half up).
 *
 * Source of the rule for money: Council Regulation (EC) No 1103/97, article 5.
 * @param divisor not zero
 */
export function roundedQuotient(dividend: bigint, divisor: bigint): bigint {
  const isNegative = dividend < 0n !== divisor < 0n;
  const above = dividend < 0n ? -dividend : dividend;
  const below = divisor < 0n ? -divisor : divisor;
  const magnitude = (2n * above + below) / (2n * below);
  return isNegative ? -magnitude : magnitude;
}
