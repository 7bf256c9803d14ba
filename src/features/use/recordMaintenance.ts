import { optionalRecordId, recordId } from '../../api/kit/globalId.js';
import { pastInstant } from '../../api/kit/pastInstant.js';
import { Checklist } from '../../db/checklist.js';
import { insertRow } from '../../db/insertRow.js';
import type { UnitOfWork } from '../../db/unitOfWork.js';
import { MaintenanceDoneEntity } from './maintenanceDone.entity.js';
import type { RecordMaintenanceInput } from './use.inputs.js';

/** Writes down that a rule was followed. @returns the rule's id, whose standing it changes. */
export async function recordMaintenance(
  work: UnitOfWork,
  input: RecordMaintenanceInput,
): Promise<string> {
  const ruleId = recordId('MaintenanceRule', input.ruleId, ['ruleId']);
  const check = new Checklist(work);
  await check.exists('maintenance_rule', ruleId, ['ruleId']);
  const doneAt = pastInstant(check, work, input.doneAt, ['doneAt']);
  const doneById = optionalRecordId('Party', input.doneById ?? null, ['doneById']);
  await check.exists('party', doneById, ['doneById']);
  const note = check.text(input.note, ['note']);
  check.done();
  await insertRow(work, MaintenanceDoneEntity, {
    ruleId,
    doneAt,
    doneById,
    withdrawnAt: null,
    note,
  });
  return ruleId;
}
