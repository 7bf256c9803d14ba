import { checkedRecordId } from '../../api/kit/checkedRecordId.js';
import { itemTypes } from '../../api/kit/globalId.js';
import { Checklist } from '../../db/checklist.js';
import { insertRow } from '../../db/insertRow.js';
import type { UnitOfWork } from '../../db/unitOfWork.js';
import { checkPastDay } from '../money/checkPastDay.js';
import { chooseParty } from '../parties/chooseParty.js';
import { ClaimEntity } from './claim.entity.js';
import type { RecordClaimInput } from './claim.inputs.js';

export const longestStatement = 10_000;

/** Somebody said something of an item or of a lot. */
export async function recordClaim(work: UnitOfWork, input: RecordClaimInput): Promise<string> {
  const check = new Checklist(work);
  const itemId = checkedRecordId(check, itemTypes, input.itemId, ['itemId']);
  const acquisitionId = checkedRecordId(check, 'Acquisition', input.acquisitionId, [
    'acquisitionId',
  ]);
  check.that(
    (typeof input.itemId === 'string') !== (typeof input.acquisitionId === 'string'),
    'Say what it is about: an item or a lot, one of the two.',
    ['itemId'],
  );
  await check.exists('item', itemId, ['itemId']);
  await check.exists('acquisition', acquisitionId, ['acquisitionId']);
  const statement = check.words(input.statement, ['statement'], longestStatement);
  if (input.saidOn) checkPastDay(check, input.saidOn, work.now, ['saidOn']);
  const keepSaidBy = await chooseParty(work, check, input.saidBy, ['saidBy']);
  check.done();
  const claim = await insertRow(work, ClaimEntity, {
    itemId,
    acquisitionId,
    saidById: await keepSaidBy(),
    saidOn: input.saidOn ?? null,
    statement,
  });
  return claim.id;
}
