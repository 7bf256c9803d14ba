import { v7 as uuidv7 } from 'uuid';
import type { UnitOfWork } from '../../db/unitOfWork.js';
import { ChangeEntity } from './change.entity.js';

const rowsAtOnce = 1000;

/** Writes down every change of the unit of work: who, when, before and after. */
export async function appendHistory(work: UnitOfWork): Promise<void> {
  const changes = work.writes.map((write) => ({
    id: uuidv7(),
    changedAt: work.now,
    actorId: work.actorId,
    recordTable: write.table,
    recordId: write.recordId,
    action: work.action,
    before: write.before,
    after: write.after,
  }));
  for (let start = 0; start < changes.length; start += rowsAtOnce) {
    await work.manager
      .createQueryBuilder()
      .insert()
      .into(ChangeEntity)
      .values(changes.slice(start, start + rowsAtOnce))
      .updateEntity(false)
      .execute();
  }
}
