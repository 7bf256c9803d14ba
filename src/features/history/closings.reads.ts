import type { RowSource } from '../../db/rowSource.js';
import { closedSpells, type ClosedSpell } from '../../domain/readiness/closedSpells.js';
import { readRowVersions } from './rowVersions.reads.js';

/** A record that can be closed and opened again. */
export interface ClosableRow {
  id: string;
  version: number;
  closedAt: string | null;
  how: string | null;
}

/**
 * When some records were closed, through every opening again: a row tells the last closing alone,
 * the history tells all of them. One statement, and none where nothing was ever changed.
 * @param columns what `closedAt` and `how` are called in the records of the table.
 */
export async function readClosings(
  source: RowSource,
  table: string,
  columns: { closedAt: string; how: string },
  found: readonly ClosableRow[],
): Promise<Map<string, ClosedSpell[]>> {
  const changed = found.filter(({ version }) => version > 1).map(({ id }) => id);
  const versions = await readRowVersions<Record<string, string | null>>(source, table, changed);
  return new Map(
    found.map(({ id, closedAt, how }) => {
      const written = (versions.get(id) ?? []).map(({ writtenAt, row }) => ({
        writtenAt,
        closedAt: row[columns.closedAt] ?? null,
        how: row[columns.how] ?? null,
      }));
      // The record itself has the last word, whatever was taken out of the history.
      const last = { writtenAt: written.pop()?.writtenAt ?? '', closedAt, how };
      return [id, closedSpells([...written, last])];
    }),
  );
}
