import type { EntityMetadata } from 'typeorm';
import { listParameter } from '../../db/dialect.js';
import type { Database } from '../../db/database.js';
import type { Reader } from '../../db/reader.js';
import { canonicalJson } from '../../domain/history/canonicalJson.js';
import { archivedColumns } from '../export/archivedColumn.js';
import { tableRows, type ArchivedRow } from '../export/tableRows.js';
import { readEntries, type KeptEntry } from './readEntries.js';

export interface RecordFault {
  table: string;
  id: string;
  why: string;
}

type Entity = new () => object;

/**
 * Compares every record with what the log says of it last. Columns that the log does not name (they
 * came with a later version, or were taken out) are not compared.
 */
export async function verifyRecords(
  dataSource: Database['dataSource'],
  reader: Reader,
  entities: readonly Entity[],
): Promise<{ checked: number; faults: RecordFault[] }> {
  const faults: RecordFault[] = [];
  let checked = 0;
  for (const entity of entities) {
    const metadata = dataSource.getMetadata(entity);
    if (metadata.tableName === 'change') continue;
    checked += await compareTable(reader, metadata, faults);
    faults.push(...(await goneFrom(reader, metadata.tableName)));
  }
  return { checked, faults };
}

async function compareTable(
  reader: Reader,
  metadata: EntityMetadata,
  faults: RecordFault[],
): Promise<number> {
  const table = metadata.tableName;
  let checked = 0;
  for await (const rows of tableRows(reader, table, archivedColumns(metadata))) {
    const ids = rows.map((row) => String(row['id']));
    const last = await lastEntries(reader, table, ids);
    for (const row of rows) {
      const why = whyDifferent(row, last.get(String(row['id'])));
      if (why !== null) faults.push({ table, id: String(row['id']), why });
    }
    checked += rows.length;
  }
  return checked;
}

async function lastEntries(
  reader: Reader,
  table: string,
  ids: readonly string[],
): Promise<Map<string, KeptEntry>> {
  const entries = await readEntries(
    (sql, parameters) => reader.rows(sql, parameters),
    `WHERE record_table = ? AND ${reader.dialect.isAnyOf('record_id')} ORDER BY sequence, id`,
    [table, listParameter(ids)],
  );
  return new Map(entries.map((entry) => [entry.recordId, entry]));
}

function whyDifferent(row: ArchivedRow, entry: KeptEntry | undefined): string | null {
  if (!entry) return 'the log does not know it';
  if (entry.after === null) return `the log says that it was taken away (${entry.changedAt})`;
  const different = Object.entries(entry.after)
    .filter(([field, value]) => field in row && !isSame(row[field], value))
    .map(([field]) => field);
  return different.length === 0 ? null : `it is not as the log says: ${different.join(', ')}`;
}

const isSame = (kept: unknown, logged: unknown): boolean =>
  canonicalJson(kept ?? null) === canonicalJson(logged ?? null);

/** Records that the log has last seen in the collection, and that are not there. */
async function goneFrom(reader: Reader, table: string): Promise<RecordFault[]> {
  const missing = await reader.rows<{ id: string }>(
    `SELECT DISTINCT record_id AS "id" FROM change WHERE record_table = ?
     AND NOT EXISTS (SELECT 1 FROM ${table} WHERE ${table}.id = change.record_id)`,
    [table],
  );
  const last = await lastEntries(
    reader,
    table,
    missing.map(({ id }) => id),
  );
  return [...last.values()]
    .filter(({ after }) => after !== null)
    .map(({ recordId }) => ({ table, id: recordId, why: 'the log knows it, and it is not there' }));
}
