import type { Reader, SqlValue } from '../../db/reader.js';
import type { ArchivedColumn } from './archivedColumn.js';

export type ArchivedRow = Record<string, unknown>;

const rowsAtOnce = 1000;

/** Every row of a table by id, some at a time, with the same values from both engines. */
export async function* tableRows(
  reader: Reader,
  table: string,
  columns: readonly ArchivedColumn[],
): AsyncGenerator<ArchivedRow[]> {
  const list = columns.map(({ name, column }) => `${column} AS "${name}"`).join(', ');
  for (let last = ''; ;) {
    const rows = await reader.rows<Record<string, SqlValue | boolean>>(
      `SELECT ${list} FROM ${table} WHERE id > ? ORDER BY id LIMIT ?`,
      [last, rowsAtOnce],
    );
    const lastRow = rows.at(-1);
    if (lastRow === undefined) return;
    last = String(lastRow['id']);
    yield rows.map((row) =>
      Object.fromEntries(columns.map((column) => [column.name, shown(column, row[column.name])])),
    );
  }
}

/** SQLite keeps flags as 0 and 1, and both engines keep structured values as text. */
function shown({ holds }: ArchivedColumn, value: SqlValue | boolean | undefined): unknown {
  if (value === null || value === undefined) return null;
  if (holds === 'flag') return Boolean(value);
  if (holds === 'json') return JSON.parse(String(value));
  return value;
}
