import { recordId } from '../../api/kit/globalId.js';
import { isGiven } from '../../api/kit/isGiven.js';
import { changeRow } from '../../db/changeRow.js';
import { Checklist } from '../../db/checklist.js';
import { oneAtATime } from '../../db/oneAtATime.js';
import { Refusal } from '../../db/refusal.js';
import type { UnitOfWork } from '../../db/unitOfWork.js';
import { checkPastDay } from '../money/checkPastDay.js';
import { checkDueDay } from './checkDueDay.js';
import type { ChangeLoanInput } from './loan.inputs.js';
import { LoanEntity } from './loan.entity.js';
import { refuseIfOutOfHand } from './refuseIfOutOfHand.js';

/** Corrects a loan, or writes down that the item is back. */
export async function changeLoan(work: UnitOfWork, input: ChangeLoanInput): Promise<string> {
  const id = recordId('Loan', input.id);
  await oneAtATime(work, 'out of hand');
  const before = await work.manager.findOneBy(LoanEntity, { id });
  if (!before) throw Refusal.notFound('loan');
  const check = new Checklist(work);
  const { placeName, purpose, note } = input;
  const lentOn = isGiven(input.lentOn) ? input.lentOn : before.lentOn;
  const dueOn = input.dueOn === undefined ? before.dueOn : input.dueOn;
  const returnedOn = input.returnedOn === undefined ? before.returnedOn : input.returnedOn;
  checkPastDay(check, lentOn, work.now, ['lentOn']);
  checkDueDay(check, lentOn, dueOn);
  if (returnedOn !== null) {
    checkPastDay(check, returnedOn, work.now, ['returnedOn']);
    check.that(returnedOn >= lentOn, 'It cannot be back before it went.', ['returnedOn']);
  } else if (before.returnedOn !== null) {
    await refuseIfOutOfHand(work, check, before.itemId, ['returnedOn']);
  }
  const changes = {
    lentOn,
    dueOn,
    returnedOn,
    ...(placeName !== undefined && {
      placeName: placeName === null ? null : check.words(placeName, ['placeName']),
    }),
    ...(purpose !== undefined && { purpose: check.text(purpose, ['purpose']) }),
    ...(note !== undefined && { note: check.text(note, ['note']) }),
  };
  check.done();
  await changeRow(work, LoanEntity, id, input.version, changes);
  return id;
}
