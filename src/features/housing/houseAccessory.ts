import { recordId } from '../../api/kit/globalId.js';
import { changeRow } from '../../db/changeRow.js';
import { oneAtATime } from '../../db/oneAtATime.js';
import { Refusal } from '../../db/refusal.js';
import type { UnitOfWork } from '../../db/unitOfWork.js';
import { ItemEntity } from '../items/item.entity.js';
import { presentItem } from '../items/presentItem.js';
import { recordMove } from '../places/recordMove.js';
import type { HouseAccessoryInput } from './housing.inputs.js';
import { refuseHousingCircle } from './refuseHousingCircle.js';

/** What goes into a housing stands where the housing stands. */
export async function houseAccessory(
  work: UnitOfWork,
  input: HouseAccessoryInput,
): Promise<string> {
  const id = recordId('Accessory', input.accessoryId, ['accessoryId']);
  const housingId = recordId('Accessory', input.housingId, ['housingId']);
  await oneAtATime(work, 'housing');
  const accessory = await presentItem(work, id, ['accessoryId']);
  const housing = await presentItem(work, housingId, ['housingId']);
  if (accessory.housedInId === housingId) {
    throw Refusal.invalid(`It sits in ${housing.inventoryNumber} already.`, ['housingId']);
  }
  await refuseHousingCircle(work, id, housingId);
  const { placeId } = housing;
  await recordMove(work, accessory, {
    placeId,
    movedAt: work.now,
    note: `Into the housing of ${housing.inventoryNumber}.`,
  });
  await changeRow(work, ItemEntity, id, null, { housedInId: housingId });
  return id;
}
