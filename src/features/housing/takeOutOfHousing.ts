import { recordId } from '../../api/kit/globalId.js';
import { changeRow } from '../../db/changeRow.js';
import { oneAtATime } from '../../db/oneAtATime.js';
import { Refusal } from '../../db/refusal.js';
import type { UnitOfWork } from '../../db/unitOfWork.js';
import { ItemEntity } from '../items/item.entity.js';
import { knownItem } from '../items/knownItem.js';
import type { TakeOutOfHousingInput } from './housing.inputs.js';

export async function takeOutOfHousing(
  work: UnitOfWork,
  input: TakeOutOfHousingInput,
): Promise<string> {
  const id = recordId('Accessory', input.accessoryId, ['accessoryId']);
  await oneAtATime(work, 'housing');
  const accessory = await knownItem(work, id, ['accessoryId']);
  if (accessory.housedInId === null) {
    throw Refusal.invalid('It does not sit in another accessory.', ['accessoryId']);
  }
  await changeRow(work, ItemEntity, id, null, { housedInId: null });
  return id;
}
