/** What a spreadsheet takes for the beginning of a formula. */
const opensFormula = /^[=+\-@\t\r\n]/;

/**
 * A text for a file that a person opens in a spreadsheet: one that would be taken for a formula
 * gets an apostrophe in front, so that a note somebody sent never runs as one.
 * Source: OWASP, "CSV Injection".
 */
export const sheetCell = (text: string | null): string =>
  text === null ? '' : opensFormula.test(text) ? `'${text}` : text;
