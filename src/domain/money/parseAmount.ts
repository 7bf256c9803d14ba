export type ParsedAmount =
  | { readonly kind: 'amount'; readonly minorUnits: number }
  | { readonly kind: 'refused'; readonly why: string };

/**
 * Reads a written amount into minor units, digit by digit and never through a float.
 * @param exponent decimals of the currency by ISO 4217 (0, 2, 3 or 4)
 * @param decimalMark the mark before the decimals; many lists from the Continent use the comma
 */
export function parseAmount(
  text: string,
  exponent: number,
  decimalMark: '.' | ',' = '.',
): ParsedAmount {
  const written = text.trim();
  if (written === '') return refused('No amount is given.');
  const shape = /^([+-]?)(\d+)(?:([.,])(\d+))?$/.exec(written);
  if (shape === null) return refused(whyUnreadable(written, decimalMark));
  const [, sign, whole = '', mark, decimals = ''] = shape;
  if (mark !== undefined && mark !== decimalMark) {
    return refused(
      `“${written}” has a “${mark}”, which may stand before decimals or between thousands: ` +
        `leave thousands undivided and put a “${decimalMark}” before the decimals.`,
    );
  }
  if (decimals.length > exponent) {
    const allowed = exponent === 0 ? 'no decimals' : `at most ${exponent} decimals`;
    return refused(
      `“${written}” has ${decimals.length} decimals; this currency has ${allowed}. ` +
        'If the mark divides thousands, leave it out.',
    );
  }
  const magnitude = BigInt(whole + decimals.padEnd(exponent, '0'));
  if (magnitude > BigInt(Number.MAX_SAFE_INTEGER)) {
    return refused(`“${written}” is too large to be kept exactly.`);
  }
  const minorUnits = Number(magnitude);
  return {
    kind: 'amount',
    minorUnits: sign === '-' && minorUnits !== 0 ? -minorUnits : minorUnits,
  };
}

function whyUnreadable(written: string, decimalMark: string): string {
  if (/^[+-]?\d{1,3}([.,'’\s_]\d{3})+([.,]\d+)?$/.test(written)) {
    return `“${written}” has thousands divided: write the digits without a mark or space between them.`;
  }
  return `“${written}” is not an amount: write digits alone, with a “${decimalMark}” before the decimals and no currency sign.`;
}

function refused(why: string): ParsedAmount {
  return { kind: 'refused', why };
}
