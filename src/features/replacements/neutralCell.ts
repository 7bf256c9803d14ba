/**
 * A cell that no spreadsheet takes for a formula: one that begins with =, +, -, @, a tab or a
 * carriage return gets an apostrophe in front. For papers that are read and not loaded back.
 */
export const neutralCell = (cell: string): string =>
  /^[=+\-@\t\r]/.test(cell) ? `'${cell}` : cell;
