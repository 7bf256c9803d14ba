import { parse } from 'csv-parse/sync';
import type { Checklist } from '../../db/checklist.js';

const longestTable = 500_000;
const mostRows = 20_000;

/** A row of a small table, by column name, with its line in the text. */
export interface TableRow {
  line: number;
  cells: Record<string, string>;
}

/** CSV with a header that a person sent as text; what is wrong with it goes to the checklist. */
export function readSmallTable(
  check: Checklist,
  csv: string,
  columns: readonly string[],
  path: string[],
): TableRow[] {
  if (csv.length > longestTable) {
    check.refuse(`The table has ${csv.length} characters; ${longestTable} is the most.`, path);
    return [];
  }
  const rows = parsed(check, csv, path);
  const [first] = rows;
  if (!first) {
    check.refuse(`There is nothing below a first line “${columns.join(',')}”.`, path);
    return [];
  }
  const missing = columns.filter((column) => !(column in first.cells));
  if (missing.length > 0) {
    const plural = missing.length === 1 ? 'column' : 'columns';
    check.refuse(`The first line lacks the ${plural} ${missing.join(', ')}.`, path);
    return [];
  }
  if (rows.length > mostRows) check.refuse(`${mostRows} rows are the most at once.`, path);
  return rows.slice(0, mostRows);
}

function parsed(check: Checklist, csv: string, path: string[]): TableRow[] {
  try {
    const rows = parse(csv, {
      bom: true,
      columns: (names: string[]) => names.map((name) => name.trim().toLowerCase()),
      info: true,
      skip_empty_lines: true,
      trim: true,
    }) as unknown as { info: { lines: number }; record: Record<string, string> }[];
    return rows.map(({ info, record }) => ({ line: info.lines, cells: record }));
  } catch (error) {
    check.refuse(`The table cannot be read: ${(error as Error).message}`, path);
    return [];
  }
}
