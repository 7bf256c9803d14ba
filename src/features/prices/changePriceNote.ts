import { recordId } from '../../api/kit/globalId.js';
import { isGiven } from '../../api/kit/isGiven.js';
import { changeRow } from '../../db/changeRow.js';
import { Checklist } from '../../db/checklist.js';
import type { UnitOfWork } from '../../db/unitOfWork.js';
import { checkPastDay } from '../money/checkPastDay.js';
import { readSpent } from '../money/readSpent.js';
import { isQuantity, whyNoPrice, whyNoQuantity } from './notePrice.js';
import type { ChangePriceNoteInput } from './price.inputs.js';
import { PriceNoteEntity } from './priceNote.entity.js';

export async function changePriceNote(
  work: UnitOfWork,
  input: ChangePriceNoteInput,
): Promise<string> {
  const id = recordId('PriceNote', input.id);
  const { kind, notedOn, quantity, isStruck } = input;
  const check = new Checklist(work);
  if (isGiven(notedOn)) checkPastDay(check, notedOn, work.now, ['notedOn']);
  if (isGiven(quantity)) check.that(isQuantity(quantity), whyNoQuantity, ['quantity']);
  const amount = isGiven(input.amount)
    ? readSpent(check, input.amount, ['amount'], whyNoPrice)
    : undefined;
  const seenAt = isGiven(input.seenAt) ? check.words(input.seenAt, ['seenAt']) : undefined;
  const note = input.note === undefined ? undefined : check.text(input.note, ['note']);
  check.done();
  await changeRow(work, PriceNoteEntity, id, input.version, {
    ...(isGiven(kind) && { kind }),
    ...(isGiven(notedOn) && { notedOn }),
    ...(isGiven(quantity) && { quantity }),
    ...(amount && { amountMinorUnits: amount.minorUnits, currency: amount.currency }),
    ...(seenAt !== undefined && { seenAt }),
    ...(note !== undefined && { note }),
    ...(isGiven(isStruck) && { struckAt: isStruck ? work.now : null }),
  });
  return id;
}
