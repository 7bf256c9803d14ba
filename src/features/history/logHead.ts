import { beginningOfLog } from './entryHash.js';
import type { RowSource } from '../../db/rowSource.js';

/** The last entry of the log: its number, from 1, and its hash, which covers all before it. */
export interface LogHead {
  sequence: number;
  entryHash: string;
}

/** The head of the log; number 0 while nothing has been recorded. */
export async function logHead(query: RowSource['rows']): Promise<LogHead> {
  const [head] = await query<{ sequence: number | string; entryHash: string }>(
    `SELECT sequence AS "sequence", entry_hash AS "entryHash" FROM change
     WHERE sequence IS NOT NULL ORDER BY sequence DESC LIMIT 1`,
    [],
  );
  return head
    ? { sequence: Number(head.sequence), entryHash: head.entryHash }
    : { sequence: 0, entryHash: beginningOfLog };
}
