import type { EntityTarget, FindOptionsWhere } from 'typeorm';
import type { UnitOfWork } from './unitOfWork.js';

/**
 * Takes a link row away (a capability, a predecessor). Records of things that happened are never
 * removed: they are retired, ended or corrected. The history keeps what was removed.
 */
export async function removeRow<Entity extends { id: string }>(
  work: UnitOfWork,
  entity: EntityTarget<Entity>,
  id: string,
): Promise<void> {
  const where = { id } as FindOptionsWhere<Entity>;
  const before = await work.manager.findOneBy(entity, where);
  if (!before) return;
  await work.manager.delete(entity, where);
  const { tableName } = work.manager.connection.getMetadata(entity);
  work.writes.push({ table: tableName, recordId: id, before, after: null });
}
