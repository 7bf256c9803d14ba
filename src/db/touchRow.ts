import type { EntityTarget, FindOptionsWhere } from 'typeorm';
import type { KeptRow } from './keptRow.js';
import { Refusal } from './refusal.js';
import type { UnitOfWork } from './unitOfWork.js';

/**
 * Gives a record a new version because something that belongs to it changed: a break of a session,
 * a step or a predecessor of a task. So a change made on what was seen before is refused.
 * @param expectedVersion the version the person saw; null where the rule alone decides.
 * @throws Refusal NOT_FOUND, or OUT_OF_DATE when somebody changed it in between.
 */
export async function touchRow<Entity extends KeptRow>(
  work: UnitOfWork,
  entity: EntityTarget<Entity>,
  id: string,
  expectedVersion: number | null,
): Promise<Entity> {
  const { tableName } = work.manager.connection.getMetadata(entity);
  const before = await work.manager.findOneBy(entity, { id } as FindOptionsWhere<Entity>);
  if (!before) throw Refusal.notFound(tableName);
  if (expectedVersion !== null && before.version !== expectedVersion) {
    throw Refusal.stale(before.version, expectedVersion);
  }
  const stamp = { version: before.version + 1, changedAt: work.now };
  const outcome = await work.manager
    .createQueryBuilder()
    .update(entity)
    .set(stamp as never)
    .where('id = :id AND version = :version', { id, version: before.version })
    .execute();
  if (outcome.affected !== 1) throw Refusal.stale(before.version + 1, before.version);
  const after = { ...before, ...stamp };
  work.writes.push({ table: tableName, recordId: id, before, after });
  return after;
}
