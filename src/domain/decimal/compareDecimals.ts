import { parseDecimal } from './parseDecimal.js';

/**
 * Compares two decimal strings exactly ("0.30" equals "0.3"; 0.1 + 0.2 trouble cannot arise).
 * @returns below 0, 0 or above 0, as the left is less, equal or more
 * @throws RangeError when either text is not a decimal number
 */
export function compareDecimals(left: string, right: string): number {
  const a = parseDecimal(left);
  const b = parseDecimal(right);
  if (a === null || b === null) {
    throw new RangeError(`“${a === null ? left : right}” is not a decimal number such as 0.30.`);
  }
  const decimals = Math.max(a.decimals, b.decimals);
  const difference =
    a.coefficient * 10n ** BigInt(decimals - a.decimals) -
    b.coefficient * 10n ** BigInt(decimals - b.decimals);
  return difference < 0n ? -1 : difference > 0n ? 1 : 0;
}
