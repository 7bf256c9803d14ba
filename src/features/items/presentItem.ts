import { Refusal } from '../../db/refusal.js';
import type { UnitOfWork } from '../../db/unitOfWork.js';
import type { ItemEntity } from './item.entity.js';
import { knownItem } from './knownItem.js';

/** @throws Refusal when there is no such item, or it has left the collection. */
export async function presentItem(
  work: UnitOfWork,
  id: string,
  path: string[],
): Promise<ItemEntity> {
  const item = await knownItem(work, id, path);
  if (item.retiredAt === null) return item;
  throw Refusal.conflict(`${item.inventoryNumber} has left the collection. Return it first.`, path);
}
