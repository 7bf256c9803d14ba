import { parseAmount, type ParsedAmount } from '../../domain/money/parseAmount.js';

/** Groups of three after 1–3 digits, all by one mark, then perhaps another mark and decimals. */
const divided = /^([+-]?[1-9]\d{0,2})(?:([.,'’\s\u00a0])\d{3})(?:\2\d{3})*(?:(?!\2)[.,]\d+)?$/u;

/**
 * A price as people write it. Thousands may be divided where that cannot be mistaken: "1.234,50",
 * "1,234.50", "1 234", "1.234.567". A single mark counts as the decimal mark whether point or
 * comma; before exactly three digits ("1.234") it might divide thousands, so it is asked about.
 * @param exponent decimals of the currency by ISO 4217
 * @param decimalMark the list's own, where the person has said it
 */
export function readListAmount(
  text: string,
  exponent: number,
  decimalMark: '.' | ',' | null,
): ParsedAmount {
  const written = text.trim();
  const marks = written.match(/[.,]/g) ?? [];
  const lastMark = marks.at(-1) === ',' ? ',' : '.';
  const groupMark = divided.exec(written)?.[2];
  if (groupMark === undefined) return parseAmount(written, exponent, decimalMark ?? lastMark);
  const isSingleMark = marks.length === 1 && /[.,]/.test(groupMark);
  if (isSingleMark && decimalMark === null) {
    return {
      kind: 'refused',
      why: `“${written}” may have thousands divided or three decimals: leave the mark out, or say which mark the list puts before decimals.`,
    };
  }
  // Said to be the decimal mark: then it does not divide thousands.
  if (groupMark === decimalMark) return parseAmount(written, exponent, decimalMark);
  const plain = written.split(groupMark).join('');
  return parseAmount(plain, exponent, decimalMark ?? lastMark);
}
