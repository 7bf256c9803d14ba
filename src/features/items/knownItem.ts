import { Refusal } from '../../db/refusal.js';
import type { UnitOfWork } from '../../db/unitOfWork.js';
import { ItemEntity } from './item.entity.js';

/** @throws Refusal when there is no such item. */
export async function knownItem(work: UnitOfWork, id: string, path: string[]): Promise<ItemEntity> {
  const item = await work.manager.findOneBy(ItemEntity, { id });
  if (!item) throw Refusal.notFound('item', path);
  return item;
}
