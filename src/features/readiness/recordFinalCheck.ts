import { checkedRecordId } from '../../api/kit/checkedRecordId.js';
import { itemTypes, recordId } from '../../api/kit/globalId.js';
import { pastInstant } from '../../api/kit/pastInstant.js';
import { Checklist } from '../../db/checklist.js';
import { insertRow } from '../../db/insertRow.js';
import type { UnitOfWork } from '../../db/unitOfWork.js';
import { FinalCheckEntity } from './finalCheck.entity.js';
import type { RecordFinalCheckInput } from './finalCheck.inputs.js';
import { refuseValidDays } from './refuseValidDays.js';

export async function recordFinalCheck(
  work: UnitOfWork,
  input: RecordFinalCheckInput,
): Promise<string> {
  const itemId = recordId(itemTypes, input.itemId, ['itemId']);
  const check = new Checklist(work);
  await check.exists('item', itemId, ['itemId']);
  const procedure = check.words(input.procedure, ['procedure'], 120);
  const checkedAt = pastInstant(check, work, input.checkedAt, ['checkedAt']);
  const checkedById = checkedRecordId(check, 'Party', input.checkedById, ['checkedById']);
  await check.exists('party', checkedById, ['checkedById']);
  refuseValidDays(check, input.validDays, ['validDays']);
  const note = check.text(input.note, ['note']);
  check.done();
  const { isPassed, validDays } = input;
  const values = { itemId, procedure, checkedAt, isPassed, validDays, checkedById, note };
  const { id } = await insertRow(work, FinalCheckEntity, values);
  return id;
}
