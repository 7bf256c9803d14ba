import { optionalRecordId, recordId } from '../../api/kit/globalId.js';
import { pastInstant } from '../../api/kit/pastInstant.js';
import { changeRow } from '../../db/changeRow.js';
import { Checklist } from '../../db/checklist.js';
import { Refusal } from '../../db/refusal.js';
import type { UnitOfWork } from '../../db/unitOfWork.js';
import { MaintenanceDoneEntity } from './maintenanceDone.entity.js';
import type { ChangeMaintenanceDoneInput } from './use.inputs.js';

/** Corrects what was written down wrongly. @returns the rule's id, whose standing it changes. */
export async function changeMaintenanceDone(
  work: UnitOfWork,
  input: ChangeMaintenanceDoneInput,
): Promise<string> {
  const id = recordId('MaintenanceDone', input.id);
  const done = await work.manager.findOneBy(MaintenanceDoneEntity, { id });
  if (!done) throw Refusal.notFound('maintenance done');
  const check = new Checklist(work);
  const doneAt = input.doneAt && pastInstant(check, work, input.doneAt, ['doneAt']);
  const doneById = optionalRecordId('Party', input.doneById, ['doneById']);
  await check.exists('party', doneById ?? null, ['doneById']);
  const note = input.note === undefined ? undefined : check.text(input.note, ['note']);
  check.done();
  const { isWithdrawn } = input;
  await changeRow(work, MaintenanceDoneEntity, id, input.version, {
    ...(doneAt && { doneAt }),
    ...(doneById !== undefined && { doneById }),
    ...(note !== undefined && { note }),
    ...(typeof isWithdrawn === 'boolean' && {
      withdrawnAt: isWithdrawn ? (done.withdrawnAt ?? work.now) : null,
    }),
  });
  return done.ruleId;
}
