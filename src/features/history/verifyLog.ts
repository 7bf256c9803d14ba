import type { Reader } from '../../db/reader.js';
import { beginningOfLog, entryHash } from './entryHash.js';
import type { LogHead } from './logHead.js';
import { readEntries, type KeptEntry } from './readEntries.js';

export interface LogFault {
  /** The number at which the log stops fitting; null for entries that have none. */
  sequence: number | null;
  why: string;
}

export interface VerifiedLog {
  /** Entries that fit. */
  checked: number;
  head: LogHead;
  /** The first thing that does not fit; null when all does. */
  fault: LogFault | null;
  /** Hash by number, of the numbers that were asked for. */
  hashes: ReadonlyMap<number, string>;
}

const entriesAtOnce = 1000;

/**
 * Computes the hash of every entry again, from the first on.
 * @param wanted numbers of entries whose hashes are to be told, for comparison with signed heads
 */
export async function verifyLog(
  reader: Reader,
  wanted: ReadonlySet<number> = new Set(),
  onEntry: (done: number) => void = () => undefined,
): Promise<VerifiedLog> {
  const hashes = new Map<number, string>();
  let head: LogHead = { sequence: 0, entryHash: beginningOfLog };
  const outcome = (fault: LogFault | null) => ({ checked: head.sequence, head, fault, hashes });
  for (;;) {
    const entries = await readEntries(
      (sql, parameters) => reader.rows(sql, parameters),
      'WHERE sequence > ? ORDER BY sequence LIMIT ?',
      [head.sequence, entriesAtOnce],
    );
    if (entries.length === 0) break;
    for (const entry of entries) {
      const fault = faultOf(entry, head);
      if (fault) return outcome(fault);
      head = { sequence: entry.sequence, entryHash: entry.entryHash };
      if (wanted.has(entry.sequence)) hashes.set(entry.sequence, entry.entryHash);
    }
    onEntry(head.sequence);
  }
  const [outside] = await reader.rows<{ count: number }>(
    'SELECT COUNT(*) AS "count" FROM change WHERE sequence IS NULL OR sequence < 1',
  );
  const count = Number(outside?.count ?? 0);
  if (count === 0) return outcome(null);
  return outcome({ sequence: null, why: `${count} entries stand outside the chain` });
}

function faultOf(entry: KeptEntry, head: LogHead): LogFault | null {
  const { sequence } = entry;
  if (sequence !== head.sequence + 1) {
    return { sequence: head.sequence + 1, why: 'this entry is missing' };
  }
  if (entryHash(entry, head.entryHash) === entry.entryHash) return null;
  return {
    sequence,
    why: `it does not fit what is before it (${entry.action} of ${entry.recordTable} ${entry.recordId}, ${entry.changedAt}): it was altered, or another was put in or taken out`,
  };
}
