import { checkedRecordId } from '../../api/kit/checkedRecordId.js';
import { Checklist } from '../../db/checklist.js';
import { insertRow } from '../../db/insertRow.js';
import type { UnitOfWork } from '../../db/unitOfWork.js';
import { checkPastDay } from '../money/checkPastDay.js';
import { readSpent } from '../money/readSpent.js';
import type { NotePriceInput } from './price.inputs.js';
import { PriceNoteEntity } from './priceNote.entity.js';

const mostAtOnce = 1_000_000;
export const whyNoQuantity = 'Say how many the price was for: 1 or more.';
export const whyNoPrice = 'A price is not below zero.';

export const isQuantity = (quantity: number): boolean => quantity >= 1 && quantity <= mostAtOnce;

export async function notePrice(work: UnitOfWork, input: NotePriceInput): Promise<string> {
  const check = new Checklist(work);
  const partTypeId = checkedRecordId(check, 'PartType', input.partTypeId, ['partTypeId']);
  const modelId = checkedRecordId(check, 'Model', input.modelId, ['modelId']);
  const isOfOne = ((input.partTypeId ?? null) === null) !== ((input.modelId ?? null) === null);
  check.that(isOfOne, 'Say what was priced: a part type or a model, one of the two.', [
    'partTypeId',
  ]);
  await check.exists('part_type', partTypeId, ['partTypeId']);
  await check.exists('model', modelId, ['modelId']);
  checkPastDay(check, input.notedOn, work.now, ['notedOn']);
  const amount = readSpent(check, input.amount, ['amount'], whyNoPrice);
  check.that(isQuantity(input.quantity), whyNoQuantity, ['quantity']);
  const seenAt = check.words(input.seenAt, ['seenAt']);
  const note = check.text(input.note, ['note']);
  check.done();
  const row = await insertRow(work, PriceNoteEntity, {
    partTypeId,
    modelId,
    kind: input.kind,
    notedOn: input.notedOn,
    amountMinorUnits: amount.minorUnits,
    currency: amount.currency,
    quantity: input.quantity,
    seenAt,
    note,
    struckAt: null,
  });
  return row.id;
}
