import { randomBytes } from 'node:crypto';
import { v7 as uuidv7 } from 'uuid';
import { oneAtATime } from '../../db/oneAtATime.js';
import { queryInWork } from '../../db/queryInWork.js';
import type { UnitOfWork } from '../../db/unitOfWork.js';
import { ChangeEntity } from './change.entity.js';
import { entryHash, type LogEntry } from './entryHash.js';
import { logHead } from './logHead.js';

const rowsAtOnce = 1000;
const saltBytes = 16;

/**
 * Writes down every change of the unit of work: who, when, before and after, each entry chained to
 * the one before it. Where several write at once, whoever comes here first is first in the log, and
 * the others wait for the end of that transaction: so it is called last of all.
 */
export async function appendHistory(work: UnitOfWork): Promise<void> {
  if (work.writes.length === 0) return;
  await oneAtATime(work, 'history');
  const head = await logHead((sql, parameters) => queryInWork(work, sql, parameters));
  let { sequence, entryHash: previous } = head;
  for (let start = 0; start < work.writes.length; start += rowsAtOnce) {
    const writes = work.writes.slice(start, start + rowsAtOnce);
    const salts = randomBytes(saltBytes * writes.length).toString('hex');
    const entries = writes.map((write, index) => {
      const entry: LogEntry = {
        sequence: ++sequence,
        id: uuidv7(),
        changedAt: work.now,
        actorId: work.actorId,
        recordTable: write.table,
        recordId: write.recordId,
        action: work.action,
        before: write.before,
        after: write.after,
        salt: salts.slice(index * saltBytes * 2, (index + 1) * saltBytes * 2),
        redacted: null,
      };
      previous = entryHash(entry, previous);
      return { ...entry, entryHash: previous };
    });
    await work.manager
      .createQueryBuilder()
      .insert()
      .into(ChangeEntity)
      .values(entries as never)
      .updateEntity(false)
      .execute();
  }
}
