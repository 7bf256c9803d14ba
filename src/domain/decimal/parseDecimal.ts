import type { Decimal } from './decimal.js';

/** Beyond this many powers of ten no bench quantity lies, and a big integer could be made huge. */
const LARGEST_EXPONENT = 99;
const LONGEST_TEXT = 100;

/** Reads "0.30", "-12", "4.7e-12"; null when the text is not such a number. */
export function parseDecimal(text: string): Decimal | null {
  const shape = /^([+-]?\d+)(?:\.(\d+))?(?:[eE]([+-]?\d{1,3}))?$/.exec(text);
  if (shape === null || text.length > LONGEST_TEXT) return null;
  const [, whole = '', fraction = '', exponentText = '0'] = shape;
  const exponent = Number(exponentText);
  if (Math.abs(exponent) > LARGEST_EXPONENT) return null;
  const decimals = fraction.length - exponent;
  const digits = BigInt(whole + fraction);
  return decimals >= 0
    ? { coefficient: digits, decimals }
    : { coefficient: digits * 10n ** BigInt(-decimals), decimals: 0 };
}
