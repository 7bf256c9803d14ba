import type { Checklist } from '../../db/checklist.js';
import { queryInWork } from '../../db/queryInWork.js';
import type { UnitOfWork } from '../../db/unitOfWork.js';
import type { LoanDirection } from './lossKind.js';

/** What is lent or missing cannot be lent, or go for good, before it is back. */
export async function refuseIfOutOfHand(
  work: UnitOfWork,
  check: Checklist,
  itemId: string,
  path: string[],
): Promise<void> {
  const [lent] = await queryInWork<{ lentOn: string; direction: LoanDirection }>(
    work,
    'SELECT lent_on AS "lentOn", direction AS "direction" FROM loan WHERE item_id = ? AND returned_on IS NULL',
    [itemId],
  );
  const [missing] = await queryInWork<{ missedOn: string }>(
    work,
    'SELECT missed_on AS "missedOn" FROM item_loss WHERE item_id = ? AND found_on IS NULL',
    [itemId],
  );
  const conflict = (message: string): void => check.add({ code: 'CONFLICT', message, path });
  if (lent) {
    const how = lent.direction === 'IN' ? 'lent to us' : 'lent';
    conflict(`It is ${how} since ${lent.lentOn}: write down its return first.`);
  }
  if (missing)
    conflict(`It is missing since ${missing.missedOn}: write down that it was found first.`);
}
