import { checkedRecordId } from '../../api/kit/checkedRecordId.js';
import { itemTypes } from '../../api/kit/globalId.js';
import { Checklist } from '../../db/checklist.js';
import { insertRow } from '../../db/insertRow.js';
import { queryInWork } from '../../db/queryInWork.js';
import { shortText } from '../../db/shortText.js';
import type { UnitOfWork } from '../../db/unitOfWork.js';
import { itemFitOut, positionNamed } from '../inspections/itemFitOut.js';
import { readSpent } from '../money/readSpent.js';
import { checkQuantity } from '../stock/checkQuantity.js';
import { keepSubstitutes, readSubstitutes } from './readSubstitutes.js';
import { WantEntity } from './want.entity.js';
import type { AddWantInput } from './want.inputs.js';
import { whyCeiling } from './whyCeiling.js';

export async function addWant(work: UnitOfWork, input: AddWantInput): Promise<string> {
  const check = new Checklist(work);
  const partTypeId = checkedRecordId(check, 'PartType', input.partTypeId, ['partTypeId']);
  const taskId = checkedRecordId(check, 'Task', input.taskId, ['taskId']);
  const givenItemId = checkedRecordId(check, itemTypes, input.itemId, ['itemId']);
  await check.exists('part_type', partTypeId, ['partTypeId']);
  await check.exists('task', taskId, ['taskId']);
  await check.exists('item', givenItemId, ['itemId']);
  const description = shortText(check, input.description, ['description']);
  check.that(
    typeof input.partTypeId === 'string' || description !== null,
    'Say what is wanted: give a part type or a description.',
    ['description'],
  );
  const itemId = givenItemId ?? (taskId === null ? null : await itemOfTask(work, taskId));
  const words = shortText(check, input.designator, ['designator'], 60);
  check.that(words === null || itemId !== null, 'Say of which set: give the item too.', [
    'designator',
  ]);
  const fitOut = itemId === null || words === null ? null : await itemFitOut(work, itemId);
  const named = positionNamed(fitOut?.positions ?? [], words ?? '');
  checkQuantity(check, input.quantity, ['quantity']);
  const ceiling = input.ceiling ? readSpent(check, input.ceiling, ['ceiling'], whyCeiling) : null;
  const substituteIds = await readSubstitutes(check, input.substituteIds);
  const note = check.text(input.note, ['note']);
  check.done();
  const { id } = await insertRow(work, WantEntity, {
    partTypeId,
    description,
    itemId,
    designator: named?.designator ?? words,
    taskId,
    quantity: input.quantity,
    ceilingMinorUnits: ceiling?.minorUnits ?? null,
    ceilingCurrency: ceiling?.currency ?? null,
    droppedAt: null,
    note,
  });
  await keepSubstitutes(work, id, substituteIds);
  return id;
}

async function itemOfTask(work: UnitOfWork, taskId: string): Promise<string | null> {
  const [found] = await queryInWork<{ itemId: string }>(
    work,
    `SELECT project.item_id AS "itemId" FROM task JOIN project ON project.id = task.project_id
     WHERE task.id = ?`,
    [taskId],
  );
  return found?.itemId ?? null;
}
