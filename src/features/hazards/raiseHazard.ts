import { itemTypes, optionalRecordId, recordId } from '../../api/kit/globalId.js';
import { pastInstant } from '../../api/kit/pastInstant.js';
import { Checklist } from '../../db/checklist.js';
import { insertRow } from '../../db/insertRow.js';
import { queryInWork } from '../../db/queryInWork.js';
import type { UnitOfWork } from '../../db/unitOfWork.js';
import { HazardEntity } from './hazard.entity.js';
import type { RaiseHazardInput } from './hazard.inputs.js';

export async function raiseHazard(work: UnitOfWork, input: RaiseHazardInput): Promise<string> {
  const itemId = recordId(itemTypes, input.itemId, ['itemId']);
  const findingId = optionalRecordId('Finding', input.findingId ?? null, ['findingId']);
  const check = new Checklist(work);
  await check.exists('item', itemId, ['itemId']);
  if (findingId !== null) await refuseForeignFinding(work, check, findingId, itemId);
  const raisedAt = pastInstant(check, work, input.raisedAt, ['raisedAt']);
  const note = check.text(input.note, ['note']);
  check.done();
  const hazard = await insertRow(work, HazardEntity, {
    itemId,
    findingId,
    kind: input.kind,
    note,
    raisedAt,
    clearedAt: null,
    clearedByCheck: null,
    clearedById: null,
  });
  return hazard.id;
}

async function refuseForeignFinding(
  work: UnitOfWork,
  check: Checklist,
  findingId: string,
  itemId: string,
): Promise<void> {
  await check.exists('finding', findingId, ['findingId']);
  const [finding] = await queryInWork<{ itemId: string }>(
    work,
    'SELECT item_id AS "itemId" FROM finding WHERE id = ?',
    [findingId],
  );
  const isOfItem = finding === undefined || finding.itemId === itemId;
  check.that(isOfItem, 'This finding was made on another item.', ['findingId']);
}
