import { checkedRecordId } from '../../api/kit/checkedRecordId.js';
import { itemTypes, recordId } from '../../api/kit/globalId.js';
import { pastInstant } from '../../api/kit/pastInstant.js';
import { sentBefore } from '../../api/kit/sentBefore.js';
import { Checklist } from '../../db/checklist.js';
import { insertRow } from '../../db/insertRow.js';
import type { UnitOfWork } from '../../db/unitOfWork.js';
import { knownItem } from '../items/knownItem.js';
import { BringUpEntity } from './bringUp.entity.js';
import type { StartBringUpInput } from './bringUp.inputs.js';
import { oneRunAtATime, refuseOtherRun } from './oneRunAtATime.js';
import { procedures } from './procedures.js';

/** Begins whatever hazard stands: the steps without power are how hazards are found and cleared. */
export async function startBringUp(work: UnitOfWork, input: StartBringUpInput): Promise<string> {
  const { known, key, digest } = await sentBefore(work, BringUpEntity, input);
  if (known) return known.id;
  const itemId = recordId(itemTypes, input.itemId, ['itemId']);
  await oneRunAtATime(work, itemId);
  const item = await knownItem(work, itemId, ['itemId']);
  const check = new Checklist(work);
  const procedure = procedures.get(input.procedureKey);
  check.that(
    procedure !== undefined,
    `There is no procedure “${input.procedureKey.slice(0, 60)}”. There are: ${[...procedures.keys()].join(', ')}.`,
    ['procedureKey'],
  );
  check.that(item.retiredAt === null, `${item.inventoryNumber} has left the collection.`, [
    'itemId',
  ]);
  const startedAt = pastInstant(check, work, input.startedAt, ['startedAt']);
  const startedById = checkedRecordId(check, 'Party', input.startedById, ['startedById']);
  await check.exists('party', startedById, ['startedById']);
  const note = check.text(input.note, ['note']);
  check.done();
  if (!procedure) throw new Error('a bring-up without a procedure passed its checks');
  await refuseOtherRun(work, itemId, null);
  const run = await insertRow(work, BringUpEntity, {
    key,
    digest,
    itemId,
    procedure,
    status: 'UNDER_WAY',
    startedAt,
    endedAt: null,
    startedById,
    finalCheckId: null,
    reason: null,
    note,
  });
  return run.id;
}
