import { checkedRecordId } from '../../api/kit/checkedRecordId.js';
import { recordId } from '../../api/kit/globalId.js';
import { Checklist } from '../../db/checklist.js';
import { insertRows } from '../../db/insertRow.js';
import { removeRow } from '../../db/removeRow.js';
import { touchRow } from '../../db/touchRow.js';
import type { UnitOfWork } from '../../db/unitOfWork.js';
import type { SetPartsNeededInput } from './partsNeeded.inputs.js';
import { TaskEntity } from './task.entity.js';
import { TaskPartEntity } from './taskPart.entity.js';

const mostOfOne = 1000;
const mostParts = 100;

export async function setPartsNeeded(
  work: UnitOfWork,
  input: SetPartsNeededInput,
): Promise<string> {
  const taskId = recordId('Task', input.id);
  const check = new Checklist(work);
  check.that(input.parts.length <= mostParts, `${mostParts} part types are the most.`, ['parts']);
  const wanted = new Map<string, number>();
  for (const [index, { partTypeId, quantity }] of input.parts.entries()) {
    const path = ['parts', String(index)];
    check.that(quantity >= 1 && quantity <= mostOfOne, `Give a number from 1 to ${mostOfOne}.`, [
      ...path,
      'quantity',
    ]);
    const id = checkedRecordId(check, 'PartType', partTypeId, [...path, 'partTypeId']);
    await check.exists('part_type', id, [...path, 'partTypeId']);
    if (id === null) continue;
    check.that(!wanted.has(id), 'This part type is named twice: add the numbers up.', [
      ...path,
      'partTypeId',
    ]);
    wanted.set(id, quantity);
  }
  check.done();
  // The version guards the list: two people who set it at once do not both pass.
  await touchRow(work, TaskEntity, taskId, input.version);
  const kept = await work.manager.findBy(TaskPartEntity, { taskId });
  for (const { id, partTypeId, quantity } of kept) {
    if (wanted.get(partTypeId) === quantity) wanted.delete(partTypeId);
    else await removeRow(work, TaskPartEntity, id);
  }
  await insertRows(
    work,
    TaskPartEntity,
    [...wanted].map(([partTypeId, quantity]) => ({ taskId, partTypeId, quantity })),
  );
  return taskId;
}
