import { optionalRecordId, recordId } from '../../api/kit/globalId.js';
import { pastInstant } from '../../api/kit/pastInstant.js';
import { changeRow } from '../../db/changeRow.js';
import { Checklist } from '../../db/checklist.js';
import { Refusal } from '../../db/refusal.js';
import type { UnitOfWork } from '../../db/unitOfWork.js';
import { FindingEntity } from '../findings/finding.entity.js';
import { FitOutCheckEntity } from './fitOutCheck.entity.js';
import { InspectionEntity } from './inspection.entity.js';
import type { ChangeInspectionInput } from './inspection.inputs.js';

export async function changeInspection(
  work: UnitOfWork,
  input: ChangeInspectionInput,
): Promise<string> {
  const id = recordId('Inspection', input.id);
  const before = await work.manager.findOneBy(InspectionEntity, { id });
  if (!before) throw Refusal.notFound('inspection');
  const inspectorId = optionalRecordId('Party', input.inspectorId, ['inspectorId']);
  const check = new Checklist(work);
  await check.exists('party', inspectorId ?? null, ['inspectorId']);
  const inspectedAt = input.inspectedAt
    ? pastInstant(check, work, input.inspectedAt, ['inspectedAt'])
    : before.inspectedAt;
  const note = input.note === undefined ? undefined : check.text(input.note, ['note']);
  check.done();
  await changeRow(work, InspectionEntity, id, input.version, {
    inspectedAt,
    ...(inspectorId !== undefined && { inspectorId }),
    ...(note !== undefined && { note }),
  });
  if (inspectedAt !== before.inspectedAt) await moveAlong(work, before, inspectedAt);
  return id;
}

/** What was seen at the inspection was seen when it was done. */
async function moveAlong(
  work: UnitOfWork,
  { id: inspectionId, inspectedAt }: InspectionEntity,
  at: string,
): Promise<void> {
  const checks = await work.manager.findBy(FitOutCheckEntity, { inspectionId });
  for (const { id } of checks) {
    await changeRow(work, FitOutCheckEntity, id, null, { checkedAt: at });
  }
  const findings = await work.manager.findBy(FindingEntity, { inspectionId, seenAt: inspectedAt });
  for (const { id } of findings) await changeRow(work, FindingEntity, id, null, { seenAt: at });
}
