/**
 * A number as it was typed, with a comma or a point, as the API takes it.
 * @returns null when it is none; then what was typed is sent as it is, and the API says what is wrong
 */
export function typedNumber(typed: string): string | null {
  const text = typed.trim().replace('−', '-');
  const pointed = text.includes('.') ? text : text.replace(',', '.');
  return /^[+-]?(\d+\.?\d*|\.\d+)$/.test(pointed) ? pointed : null;
}
