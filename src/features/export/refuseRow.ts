import { Refusal } from '../../db/refusal.js';
import type { ArchivedColumn } from './archivedColumn.js';
import type { ArchivedRow } from './tableRows.js';

const largestCount = 2 ** 31 - 1;

/** Refuses a row that the table could not have held. @throws Refusal naming table, row, column. */
export function refuseRow(
  table: string,
  row: ArchivedRow,
  columns: readonly ArchivedColumn[],
  position: number,
): void {
  const where = `Row ${position} of “${table}”`;
  const unknown = Object.keys(row).find((name) => !columns.some((column) => column.name === name));
  if (unknown !== undefined) throw Refusal.invalid(`${where} has an unknown column “${unknown}”.`);
  for (const column of columns) {
    const why = whyWrong(column, row[column.name]);
    if (why !== null) throw Refusal.invalid(`${where}: “${column.name}” ${why}.`);
  }
}

function whyWrong({ holds, longest, mayBeNull }: ArchivedColumn, value: unknown): string | null {
  if (value === undefined) return 'is missing';
  if (value === null) return mayBeNull ? null : 'is null and must not be';
  switch (holds) {
    case 'json':
      return null;
    case 'flag':
      return typeof value === 'boolean' ? null : 'is neither true nor false';
    case 'count':
    case 'largeCount': {
      const largest = holds === 'count' ? largestCount : Number.MAX_SAFE_INTEGER;
      const fits = Number.isInteger(value) && Math.abs(value as number) <= largest;
      return fits ? null : `is not a whole number up to ${largest}`;
    }
    case 'text':
      if (typeof value !== 'string') return 'is not text';
      if (value.includes('\0')) return 'holds a NUL character';
      return longest !== null && value.length > longest ? `is longer than ${longest}` : null;
  }
}
