import { itemTypes, recordId } from '../../api/kit/globalId.js';
import { Checklist } from '../../db/checklist.js';
import { insertRow } from '../../db/insertRow.js';
import { oneAtATime } from '../../db/oneAtATime.js';
import type { UnitOfWork } from '../../db/unitOfWork.js';
import { presentItem } from '../items/presentItem.js';
import { checkPastDay } from '../money/checkPastDay.js';
import { chooseParty } from '../parties/chooseParty.js';
import { checkDueDay } from './checkDueDay.js';
import type { PartyChoiceInput } from '../parties/partyChoice.inputs.js';
import type { BorrowItemInput, LendItemInput, LoanTerms } from './loan.inputs.js';
import type { LoanDirection } from './lossKind.js';
import { LoanEntity } from './loan.entity.js';
import { refuseIfOutOfHand } from './refuseIfOutOfHand.js';

/** An item goes to a borrower; it must be at hand. */
export const lendItem = (work: UnitOfWork, input: LendItemInput): Promise<string> =>
  recordLoan(work, 'OUT', input.borrower, 'borrower', input);

/** Somebody lends us an item; it is in the collection until it goes back. */
export const borrowItem = (work: UnitOfWork, input: BorrowItemInput): Promise<string> =>
  recordLoan(work, 'IN', input.lender, 'lender', input);

async function recordLoan(
  work: UnitOfWork,
  direction: LoanDirection,
  otherParty: PartyChoiceInput,
  partyField: 'borrower' | 'lender',
  input: LoanTerms,
): Promise<string> {
  const itemId = recordId(itemTypes, input.itemId, ['itemId']);
  await oneAtATime(work, 'out of hand');
  await presentItem(work, itemId, ['itemId']);
  const check = new Checklist(work);
  await refuseIfOutOfHand(work, check, itemId, ['itemId']);
  checkPastDay(check, input.lentOn, work.now, ['lentOn']);
  const dueOn = input.dueOn ?? null;
  checkDueDay(check, input.lentOn, dueOn);
  const keepBorrower = await chooseParty(work, check, otherParty, [partyField]);
  const placeName =
    typeof input.placeName === 'string' ? check.words(input.placeName, ['placeName']) : null;
  const purpose = check.text(input.purpose, ['purpose']);
  const note = check.text(input.note, ['note']);
  check.done();
  const borrowerId = (await keepBorrower()) ?? '';
  const { lentOn } = input;
  const terms = { lentOn, dueOn, returnedOn: null, placeName, purpose, note };
  return (await insertRow(work, LoanEntity, { itemId, direction, borrowerId, ...terms })).id;
}
