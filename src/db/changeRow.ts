import type { EntityTarget, FindOptionsWhere } from 'typeorm';
import { Refusal } from './refusal.js';
import type { KeptRow } from './keptRow.js';
import type { UnitOfWork } from './unitOfWork.js';

/** The fields of a record that a caller may change. */
export type RowChanges<Entity extends KeptRow> = Partial<Omit<Entity, keyof KeptRow>>;

/**
 * Changes one record, with its place in the history.
 * @param expectedVersion the version the person saw; null where the rule alone decides.
 * @returns the record as it is now; unchanged, and without a new version, when nothing differs.
 * @throws Refusal NOT_FOUND, or CONFLICT when somebody changed it in between.
 */
export async function changeRow<Entity extends KeptRow>(
  work: UnitOfWork,
  entity: EntityTarget<Entity>,
  id: string,
  expectedVersion: number | null,
  changes: RowChanges<Entity>,
): Promise<Entity> {
  const metadata = work.manager.connection.getMetadata(entity);
  const before = await work.manager.findOneBy(entity, { id } as FindOptionsWhere<Entity>);
  if (!before) throw Refusal.notFound(metadata.tableName);
  if (expectedVersion !== null && before.version !== expectedVersion) {
    throw Refusal.stale(before.version, expectedVersion);
  }
  const given = Object.entries(changes).filter(([, value]) => value !== undefined);
  const differs = given.some(
    ([key, value]) => JSON.stringify(before[key as keyof Entity]) !== JSON.stringify(value),
  );
  if (!differs) return before;
  const stamp = { version: before.version + 1, changedAt: work.now };
  const changed = { ...Object.fromEntries(given), ...stamp };
  const outcome = await work.manager
    .createQueryBuilder()
    .update(entity)
    .set(changed as never)
    .where('id = :id AND version = :version', { id, version: before.version })
    .execute();
  if (outcome.affected !== 1) throw Refusal.stale(before.version + 1, before.version);
  const after = { ...before, ...changed };
  work.writes.push({ table: metadata.tableName, recordId: id, before, after });
  return after;
}
