/**
 * Minor units as a decimal string with all decimals of the currency: 1250 at exponent 2 is "12.50".
 * `parseAmount` reads it back to the same number.
 * @throws RangeError when `minorUnits` is not a whole number within ±(2^53 − 1)
 */
export function formatAmount(minorUnits: number, exponent: number): string {
  if (!Number.isSafeInteger(minorUnits)) {
    throw new RangeError('An amount must be a whole number of minor units.');
  }
  const digits = String(Math.abs(minorUnits)).padStart(exponent + 1, '0');
  const sign = minorUnits < 0 ? '-' : '';
  if (exponent === 0) return sign + digits;
  return `${sign}${digits.slice(0, -exponent)}.${digits.slice(-exponent)}`;
}
