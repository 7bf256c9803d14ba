import { itemTypes, recordId } from '../../api/kit/globalId.js';
import { Checklist } from '../../db/checklist.js';
import { insertRow } from '../../db/insertRow.js';
import { oneAtATime } from '../../db/oneAtATime.js';
import type { UnitOfWork } from '../../db/unitOfWork.js';
import { presentItem } from '../items/presentItem.js';
import { checkPastDay } from '../money/checkPastDay.js';
import { chooseParty } from '../parties/chooseParty.js';
import { checkDueDay } from './checkDueDay.js';
import type { LendItemInput } from './loan.inputs.js';
import { LoanEntity } from './loan.entity.js';
import { refuseIfOutOfHand } from './refuseIfOutOfHand.js';

/** An item goes to a borrower; it must be at hand. */
export async function lendItem(work: UnitOfWork, input: LendItemInput): Promise<string> {
  const itemId = recordId(itemTypes, input.itemId, ['itemId']);
  await oneAtATime(work, 'out of hand');
  await presentItem(work, itemId, ['itemId']);
  const check = new Checklist(work);
  await refuseIfOutOfHand(work, check, itemId, ['itemId']);
  checkPastDay(check, input.lentOn, work.now, ['lentOn']);
  const dueOn = input.dueOn ?? null;
  checkDueDay(check, input.lentOn, dueOn);
  const keepBorrower = await chooseParty(work, check, input.borrower, ['borrower']);
  const placeName =
    typeof input.placeName === 'string' ? check.words(input.placeName, ['placeName']) : null;
  const purpose = check.text(input.purpose, ['purpose']);
  const note = check.text(input.note, ['note']);
  check.done();
  const borrowerId = (await keepBorrower()) ?? '';
  const { lentOn } = input;
  const loan = { itemId, borrowerId, lentOn, dueOn, returnedOn: null, placeName, purpose, note };
  return (await insertRow(work, LoanEntity, loan)).id;
}
