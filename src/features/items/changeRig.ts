import { recordId } from '../../api/kit/globalId.js';
import { isGiven } from '../../api/kit/isGiven.js';
import { changeRow } from '../../db/changeRow.js';
import { Checklist } from '../../db/checklist.js';
import type { UnitOfWork } from '../../db/unitOfWork.js';
import { checkInventoryNumber } from './checkInventoryNumber.js';
import { checkItem } from './checkItem.js';
import { ItemEntity } from './item.entity.js';
import type { ChangeRigInput } from './rig.inputs.js';

export async function changeRig(work: UnitOfWork, input: ChangeRigInput): Promise<string> {
  const id = recordId('Rig', input.id);
  const check = new Checklist(work);
  const { inventoryNumber } = input;
  const changes = {
    ...(await checkItem(work, check, 'RIG', input)),
    ...(isGiven(inventoryNumber) && {
      inventoryNumber: await checkInventoryNumber(work, check, inventoryNumber, id),
    }),
  };
  check.done();
  await changeRow(work, ItemEntity, id, input.version, changes);
  return id;
}
