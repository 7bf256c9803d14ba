import { randomBytes } from 'node:crypto';
import type { Database } from '../../db/database.js';
import { oneAtATime } from '../../db/oneAtATime.js';
import { queryInWork } from '../../db/queryInWork.js';
import type { UnitOfWork } from '../../db/unitOfWork.js';
import { beginningOfLog, entryHash } from './entryHash.js';
import { readEntries } from './readEntries.js';

const entriesAtOnce = 500;
const saltBytes = 16;

/**
 * Chains what was recorded before the log was chained, in the order in which it was recorded. Only
 * where nothing is chained yet: an entry that turns up outside a chain later is a fault, which
 * `reglow verify` names.
 */
export async function chainExisting(work: UnitOfWork): Promise<void> {
  await oneAtATime(work, 'history');
  if (!(await isUnchained((sql) => queryInWork(work, sql)))) return;
  let sequence = 0;
  let previous = beginningOfLog;
  for (;;) {
    const entries = await readEntries(
      (sql, parameters) => queryInWork(work, sql, parameters),
      'WHERE sequence IS NULL ORDER BY id LIMIT ?',
      [entriesAtOnce],
    );
    if (entries.length === 0) return;
    for (const entry of entries) {
      const salt = randomBytes(saltBytes).toString('hex');
      previous = entryHash({ ...entry, sequence: ++sequence, salt }, previous);
      await queryInWork(
        work,
        'UPDATE change SET sequence = ?, salt = ?, entry_hash = ? WHERE id = ?',
        [sequence, salt, previous, entry.id],
      );
    }
  }
}

/** At the first opening after the log learnt to chain. */
export async function chainWhenOpened(database: Database): Promise<void> {
  if (!(await isUnchained((sql) => database.reader.rows(sql)))) return;
  // No record changes here, so that nothing of this is written into the log itself.
  const act = { action: 'chainLog', actorId: null, now: '1970-01-01T00:00:00.000Z' };
  await database.write(act, chainExisting);
}

async function isUnchained(query: (sql: string) => Promise<object[]>): Promise<boolean> {
  const chained = await query('SELECT id FROM change WHERE sequence IS NOT NULL LIMIT 1');
  if (chained.length > 0) return false;
  return (await query('SELECT id FROM change LIMIT 1')).length > 0;
}
