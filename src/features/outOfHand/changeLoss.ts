import { recordId } from '../../api/kit/globalId.js';
import { isGiven } from '../../api/kit/isGiven.js';
import { changeRow } from '../../db/changeRow.js';
import { Checklist } from '../../db/checklist.js';
import { oneAtATime } from '../../db/oneAtATime.js';
import { Refusal } from '../../db/refusal.js';
import type { UnitOfWork } from '../../db/unitOfWork.js';
import { checkPastDay } from '../money/checkPastDay.js';
import { ItemLossEntity } from './itemLoss.entity.js';
import type { ChangeLossInput } from './itemLoss.inputs.js';

/** Corrects the record of a loss, or writes down that the item was found. */
export async function changeLoss(work: UnitOfWork, input: ChangeLossInput): Promise<string> {
  const id = recordId('ItemLoss', input.id);
  await oneAtATime(work, 'out of hand');
  const before = await work.manager.findOneBy(ItemLossEntity, { id });
  if (!before) throw Refusal.notFound('item_loss');
  const check = new Checklist(work);
  const { kind, circumstances, note } = input;
  const missedOn = isGiven(input.missedOn) ? input.missedOn : before.missedOn;
  const foundOn = input.foundOn === undefined ? before.foundOn : input.foundOn;
  checkPastDay(check, missedOn, work.now, ['missedOn']);
  if (foundOn !== null) {
    checkPastDay(check, foundOn, work.now, ['foundOn']);
    check.that(foundOn >= missedOn, 'It cannot be found before it was missed.', ['foundOn']);
  }
  const words = (field: 'reportedTo' | 'reportNumber') => {
    const text = input[field];
    if (text === undefined) return before[field];
    return text === null ? null : check.words(text, [field]);
  };
  const changes = {
    missedOn,
    foundOn,
    reportedTo: words('reportedTo'),
    reportNumber: words('reportNumber'),
    ...(isGiven(kind) && { kind }),
    ...(circumstances !== undefined && {
      circumstances: check.text(circumstances, ['circumstances']),
    }),
    ...(note !== undefined && { note: check.text(note, ['note']) }),
  };
  check.done();
  await changeRow(work, ItemLossEntity, id, input.version, changes);
  return id;
}
