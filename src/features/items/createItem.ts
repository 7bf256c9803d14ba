import { optionalRecordId } from '../../api/kit/globalId.js';
import { Checklist } from '../../db/checklist.js';
import { insertRow } from '../../db/insertRow.js';
import type { UnitOfWork } from '../../db/unitOfWork.js';
import { checkPlace } from '../places/checkPlace.js';
import { MoveEntity } from '../places/move.entity.js';
import type { AccessoryRole } from './accessoryRole.js';
import { checkInventoryNumber } from './checkInventoryNumber.js';
import { checkItem } from './checkItem.js';
import { ItemEntity } from './item.entity.js';
import type { CreateItemInput } from './item.inputs.js';

/** @param role what an accessory is for; null makes it a rig. */
export async function createItem(
  work: UnitOfWork,
  input: CreateItemInput,
  role: AccessoryRole | null,
): Promise<string> {
  const kind = role === null ? 'RIG' : 'ACCESSORY';
  const check = new Checklist(work);
  const inventoryNumber = await checkInventoryNumber(work, check, input.inventoryNumber);
  const given = await checkItem(work, check, kind, input);
  const placeId = optionalRecordId('Place', input.placeId ?? null, ['placeId']);
  await checkPlace(work, check, placeId);
  check.done();
  const item = await insertRow(work, ItemEntity, {
    kind,
    inventoryNumber,
    role,
    placeId,
    name: given.name ?? null,
    modelId: given.modelId ?? null,
    serialNumber: given.serialNumber ?? null,
    madeEdtf: given.madeEdtf ?? null,
    note: given.note ?? null,
    housedInId: null,
    retiredAt: null,
    retiredReason: null,
  });
  if (placeId !== null) {
    await insertRow(work, MoveEntity, {
      itemId: item.id,
      fromPlaceId: null,
      toPlaceId: placeId,
      movedAt: work.now,
      note: null,
    });
  }
  return item.id;
}
