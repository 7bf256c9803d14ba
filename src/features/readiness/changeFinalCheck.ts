import { optionalRecordId, recordId } from '../../api/kit/globalId.js';
import { pastInstant } from '../../api/kit/pastInstant.js';
import { changeRow } from '../../db/changeRow.js';
import { Checklist } from '../../db/checklist.js';
import type { UnitOfWork } from '../../db/unitOfWork.js';
import { FinalCheckEntity } from './finalCheck.entity.js';
import type { ChangeFinalCheckInput } from './finalCheck.inputs.js';
import { refuseValidDays } from './refuseValidDays.js';

/** Corrects what was written down wrongly. A check done again is a new one. */
export async function changeFinalCheck(
  work: UnitOfWork,
  input: ChangeFinalCheckInput,
): Promise<string> {
  const id = recordId('FinalCheck', input.id);
  const check = new Checklist(work);
  const procedure =
    typeof input.procedure === 'string'
      ? check.words(input.procedure, ['procedure'], 120)
      : undefined;
  const checkedAt = input.checkedAt && pastInstant(check, work, input.checkedAt, ['checkedAt']);
  const checkedById = optionalRecordId('Party', input.checkedById, ['checkedById']);
  await check.exists('party', checkedById ?? null, ['checkedById']);
  const { isPassed, validDays } = input;
  if (typeof validDays === 'number') refuseValidDays(check, validDays, ['validDays']);
  const note = input.note === undefined ? undefined : check.text(input.note, ['note']);
  check.done();
  await changeRow(work, FinalCheckEntity, id, input.version, {
    ...(procedure !== undefined && { procedure }),
    ...(checkedAt && { checkedAt }),
    ...(typeof isPassed === 'boolean' && { isPassed }),
    ...(typeof validDays === 'number' && { validDays }),
    ...(checkedById !== undefined && { checkedById }),
    ...(note !== undefined && { note }),
  });
  return id;
}
