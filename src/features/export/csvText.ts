import { stringify } from 'csv-stringify/sync';

/**
 * Rows as CSV (RFC 4180): commas, CRLF, quotation marks where needed. Texts that a spreadsheet
 * takes for formulas (they begin with =, +, - or @) are kept as they are, because these files must
 * load back unchanged; whoever opens them in a spreadsheet imports the columns as text.
 */
export const csvText = (rows: readonly (readonly unknown[])[]): string =>
  stringify(
    rows.map((row) => row.map(written)),
    {
      record_delimiter: 'windows',
      quoted_match: /[\r\n]/,
    },
  );

/** A word for a flag, JSON for what is structured. */
function written(value: unknown): unknown {
  if (typeof value === 'boolean') return String(value);
  return typeof value === 'object' && value !== null ? JSON.stringify(value) : value;
}
