import type { SqlValue } from '../../db/reader.js';
import type { RowSource } from '../../db/rowSource.js';
import type { KeptState, LogEntry, Redacted } from './entryHash.js';

export type KeptEntry = LogEntry & { entryHash: string };

const columns = `sequence AS "sequence", id AS "id", changed_at AS "changedAt",
  actor_id AS "actorId", record_table AS "recordTable", record_id AS "recordId",
  action AS "action", "before" AS "before", "after" AS "after", salt AS "salt",
  redacted AS "redacted", entry_hash AS "entryHash"`;

/** Entries of the log as their hashes cover them. @param rest what follows FROM change */
export async function readEntries(
  query: RowSource['rows'],
  rest: string,
  parameters: readonly SqlValue[],
): Promise<KeptEntry[]> {
  const rows = await query<Record<string, SqlValue>>(
    `SELECT ${columns} FROM change ${rest}`,
    parameters,
  );
  return rows.map((row) => ({
    ...(row as unknown as KeptEntry),
    sequence: Number(row['sequence']),
    before: parsed(row['before']) as KeptState,
    after: parsed(row['after']) as KeptState,
    redacted: parsed(row['redacted']) as Redacted | null,
  }));
}

/** What is no JSON any more fits no hash; it is not to end the check. */
function parsed(text: SqlValue | undefined): unknown {
  if (text === null || text === undefined) return null;
  try {
    return JSON.parse(String(text));
  } catch {
    return { garbled: text };
  }
}
