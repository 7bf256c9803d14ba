import { checkedRecordId } from '../../api/kit/checkedRecordId.js';
import { itemTypes, recordId } from '../../api/kit/globalId.js';
import { Checklist } from '../../db/checklist.js';
import { insertRow } from '../../db/insertRow.js';
import type { UnitOfWork } from '../../db/unitOfWork.js';
import { checkPastDay } from '../money/checkPastDay.js';
import { readSpent } from '../money/readSpent.js';
import { chooseParty } from '../parties/chooseParty.js';
import { checkProjectOfItem } from './checkProjectOfItem.js';
import { ExpenseEntity } from './expense.entity.js';
import type { RecordExpenseInput } from './expense.inputs.js';

/** Money spent on an item. Money that came back is an expense below zero, with its own day. */
export async function recordExpense(work: UnitOfWork, input: RecordExpenseInput): Promise<string> {
  const itemId = recordId(itemTypes, input.itemId, ['itemId']);
  const check = new Checklist(work);
  await check.exists('item', itemId, ['itemId']);
  const projectId = checkedRecordId(check, 'Project', input.projectId, ['projectId']);
  await checkProjectOfItem(work, check, projectId, itemId);
  checkPastDay(check, input.spentOn, work.now, ['spentOn']);
  const amount = readSpent(check, input.amount, ['amount'], null);
  check.that(
    Number(input.amount.amount) !== 0,
    'Nothing was spent: give an amount above zero, or below zero for money that came back.',
    ['amount', 'amount'],
  );
  const description = check.words(input.description, ['description']);
  const note = check.text(input.note, ['note']);
  const keepPaidTo = await chooseParty(work, check, input.paidTo, ['paidTo']);
  check.done();
  const expense = await insertRow(work, ExpenseEntity, {
    itemId,
    projectId,
    spentOn: input.spentOn,
    amountMinorUnits: amount.minorUnits,
    currency: amount.currency,
    description,
    paidToId: await keepPaidTo(),
    note,
  });
  return expense.id;
}
