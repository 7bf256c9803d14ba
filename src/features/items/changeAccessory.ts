import { recordId } from '../../api/kit/globalId.js';
import { isGiven } from '../../api/kit/isGiven.js';
import { changeRow } from '../../db/changeRow.js';
import { Checklist } from '../../db/checklist.js';
import { oneAtATime } from '../../db/oneAtATime.js';
import type { UnitOfWork } from '../../db/unitOfWork.js';
import { servicesOf } from '../services/servicesOf.js';
import type { ChangeAccessoryInput } from './accessory.inputs.js';
import { checkInventoryNumber } from './checkInventoryNumber.js';
import { checkItem } from './checkItem.js';
import { ItemEntity } from './item.entity.js';

export async function changeAccessory(
  work: UnitOfWork,
  input: ChangeAccessoryInput,
): Promise<string> {
  const id = recordId('Accessory', input.id);
  await oneAtATime(work, `service of ${id}`);
  const check = new Checklist(work);
  const { inventoryNumber, role } = input;
  if (isGiven(role)) {
    const others = (await servicesOf(work, id)).filter((service) => service.role !== role);
    const rigs = [...new Set(others.map(({ rigNumber }) => rigNumber))].join(', ');
    if (others.length > 0) {
      const message = `It serves ${rigs} in its present role. Release it there first.`;
      check.add({ code: 'CONFLICT', message, path: ['role'] });
    }
  }
  const changes = {
    ...(await checkItem(work, check, 'ACCESSORY', input)),
    ...(isGiven(inventoryNumber) && {
      inventoryNumber: await checkInventoryNumber(work, check, inventoryNumber, id),
    }),
    ...(isGiven(role) && { role }),
  };
  check.done();
  await changeRow(work, ItemEntity, id, input.version, changes);
  return id;
}
