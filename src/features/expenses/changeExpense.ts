import { checkedRecordId } from '../../api/kit/checkedRecordId.js';
import { itemTypes, recordId } from '../../api/kit/globalId.js';
import { changeRow } from '../../db/changeRow.js';
import { Checklist } from '../../db/checklist.js';
import { Refusal } from '../../db/refusal.js';
import type { UnitOfWork } from '../../db/unitOfWork.js';
import { checkPastDay } from '../money/checkPastDay.js';
import { readSpent } from '../money/readSpent.js';
import { chooseParty } from '../parties/chooseParty.js';
import { checkProjectOfItem } from './checkProjectOfItem.js';
import { ExpenseEntity } from './expense.entity.js';
import type { ChangeExpenseInput } from './expense.inputs.js';

/** Corrects an expense. One that never was stays as a record of zero that says why. */
export async function changeExpense(work: UnitOfWork, input: ChangeExpenseInput): Promise<string> {
  const id = recordId('Expense', input.id);
  const before = await work.manager.findOneBy(ExpenseEntity, { id });
  if (!before) throw Refusal.notFound('expense');
  const check = new Checklist(work);
  const itemId = checkedRecordId(check, itemTypes, input.itemId, ['itemId']) ?? before.itemId;
  await check.exists('item', itemId, ['itemId']);
  const projectId =
    input.projectId === undefined
      ? before.projectId
      : checkedRecordId(check, 'Project', input.projectId, ['projectId']);
  await checkProjectOfItem(work, check, projectId, itemId);
  const spentOn = input.spentOn ?? before.spentOn;
  checkPastDay(check, spentOn, work.now, ['spentOn']);
  const amount = input.amount ? readSpent(check, input.amount, ['amount'], null) : null;
  const note = input.note === undefined ? before.note : check.text(input.note, ['note']);
  check.that(
    amount?.minorUnits !== 0 || note !== null,
    'An expense of zero is one that never was: say why in the note.',
    ['note'],
  );
  const description =
    typeof input.description === 'string'
      ? check.words(input.description, ['description'])
      : before.description;
  const keepPaidTo = await chooseParty(work, check, input.paidTo, ['paidTo']);
  check.done();
  await changeRow(work, ExpenseEntity, id, input.version, {
    itemId,
    projectId,
    spentOn,
    ...(amount && { amountMinorUnits: amount.minorUnits, currency: amount.currency }),
    description,
    paidToId: input.paidTo === undefined ? before.paidToId : await keepPaidTo(),
    note,
  });
  return id;
}
