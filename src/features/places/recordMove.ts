import { changeRow } from '../../db/changeRow.js';
import { insertRow } from '../../db/insertRow.js';
import type { UnitOfWork } from '../../db/unitOfWork.js';
import { ItemEntity } from '../items/item.entity.js';
import { MoveEntity } from './move.entity.js';

/** Puts an item, and everything housed in it, at a place. Housing has no circles. */
export async function recordMove(
  work: UnitOfWork,
  item: ItemEntity,
  to: { placeId: string | null; movedAt: string; note: string | null },
): Promise<void> {
  const { placeId, movedAt, note } = to;
  if (item.placeId !== placeId) {
    await insertRow(work, MoveEntity, {
      itemId: item.id,
      fromPlaceId: item.placeId,
      toPlaceId: placeId,
      movedAt,
      note,
    });
    await changeRow(work, ItemEntity, item.id, null, { placeId });
  }
  const housed = await work.manager.findBy(ItemEntity, { housedInId: item.id });
  for (const inner of housed) await recordMove(work, inner, to);
}
