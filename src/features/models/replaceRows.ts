import type { EntityTarget, FindOptionsWhere } from 'typeorm';
import { insertRows, type NewRow } from '../../db/insertRow.js';
import { removeRow } from '../../db/removeRow.js';
import type { UnitOfWork } from '../../db/unitOfWork.js';

/**
 * Makes the link rows of a model those given: the rows that stay the same are left alone.
 * @returns whether anything changed.
 */
export async function replaceRows<Entity extends { id: string; modelId: string }>(
  work: UnitOfWork,
  entity: EntityTarget<Entity>,
  modelId: string,
  wanted: readonly NewRow<Entity>[],
): Promise<boolean> {
  const kept = await work.manager.findBy(entity, { modelId } as FindOptionsWhere<Entity>);
  const isSame = (row: Entity, other: NewRow<Entity>): boolean =>
    Object.entries(other).every(([name, value]) => row[name as keyof Entity] === value);
  const removed = kept.filter((row) => !wanted.some((other) => isSame(row, other)));
  for (const row of removed) await removeRow(work, entity, row.id);
  const added = wanted.filter((other) => !kept.some((row) => isSame(row, other)));
  await insertRows(work, entity, added);
  return removed.length + added.length > 0;
}
