import { itemTypes, recordId } from '../../api/kit/globalId.js';
import { Checklist } from '../../db/checklist.js';
import { insertRow } from '../../db/insertRow.js';
import { oneAtATime } from '../../db/oneAtATime.js';
import { queryInWork } from '../../db/queryInWork.js';
import type { UnitOfWork } from '../../db/unitOfWork.js';
import { presentItem } from '../items/presentItem.js';
import { checkPastDay } from '../money/checkPastDay.js';
import { ItemLossEntity } from './itemLoss.entity.js';
import type { ReportLossInput } from './itemLoss.inputs.js';

/** An item was stolen or cannot be found; it may be lent at the time. */
export async function reportLoss(work: UnitOfWork, input: ReportLossInput): Promise<string> {
  const itemId = recordId(itemTypes, input.itemId, ['itemId']);
  await oneAtATime(work, 'out of hand');
  await presentItem(work, itemId, ['itemId']);
  const check = new Checklist(work);
  const missing = await queryInWork(
    work,
    'SELECT 1 AS "one" FROM item_loss WHERE item_id = ? AND found_on IS NULL',
    [itemId],
  );
  if (missing.length > 0) {
    const message = 'It is on record as missing already: change that record.';
    check.add({ code: 'CONFLICT', message, path: ['itemId'] });
  }
  checkPastDay(check, input.missedOn, work.now, ['missedOn']);
  const words = (field: 'reportedTo' | 'reportNumber') => {
    const text = input[field];
    return typeof text === 'string' ? check.words(text, [field]) : null;
  };
  const values = {
    itemId,
    kind: input.kind,
    missedOn: input.missedOn,
    circumstances: check.text(input.circumstances, ['circumstances']),
    reportedTo: words('reportedTo'),
    reportNumber: words('reportNumber'),
    foundOn: null,
    note: check.text(input.note, ['note']),
  };
  check.done();
  return (await insertRow(work, ItemLossEntity, values)).id;
}
