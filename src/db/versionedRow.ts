import type { EntityTarget, FindOptionsWhere } from 'typeorm';
import type { KeptRow } from './keptRow.js';
import { Refusal } from './refusal.js';
import type { UnitOfWork } from './unitOfWork.js';

/**
 * The record as it is kept, for an act on what a person saw.
 * @throws Refusal NOT_FOUND, or OUT_OF_DATE when somebody changed it in between.
 */
export async function versionedRow<Entity extends KeptRow>(
  work: UnitOfWork,
  entity: EntityTarget<Entity>,
  id: string,
  version: number,
): Promise<Entity> {
  const row = await work.manager.findOneBy(entity, { id } as FindOptionsWhere<Entity>);
  if (!row) throw Refusal.notFound(work.manager.connection.getMetadata(entity).tableName);
  if (row.version !== version) throw Refusal.stale(row.version, version);
  return row;
}
