import { checkedRecordId } from '../../api/kit/checkedRecordId.js';
import { itemTypes, recordId } from '../../api/kit/globalId.js';
import { pastInstant } from '../../api/kit/pastInstant.js';
import { Checklist } from '../../db/checklist.js';
import { insertRow, insertRows } from '../../db/insertRow.js';
import { Refusal } from '../../db/refusal.js';
import type { UnitOfWork } from '../../db/unitOfWork.js';
import { insertFindings } from '../findings/insertFindings.js';
import { longestFinding } from '../findings/longestFinding.js';
import { checkFitOut } from './checkFitOut.js';
import { FitOutCheckEntity } from './fitOutCheck.entity.js';
import { InspectionEntity } from './inspection.entity.js';
import type { RecordInspectionInput } from './inspection.inputs.js';
import { itemFitOut } from './itemFitOut.js';

const mostFindings = 500;

/** The whole inspection is kept, with its findings, hazards and checks, or nothing of it. */
export async function recordInspection(
  work: UnitOfWork,
  input: RecordInspectionInput,
): Promise<string> {
  const itemId = recordId(itemTypes, input.itemId, ['itemId']);
  const fitOut = await itemFitOut(work, itemId);
  if (!fitOut) throw Refusal.notFound('item', ['itemId']);
  const check = new Checklist(work);
  const inspectedAt = pastInstant(check, work, input.inspectedAt, ['inspectedAt']);
  const inspectorId = checkedRecordId(check, 'Party', input.inspectorId, ['inspectorId']);
  await check.exists('party', inspectorId, ['inspectorId']);
  const note = check.text(input.note, ['note']);
  const seen = input.findings ?? [];
  check.that(seen.length <= mostFindings, `${mostFindings} findings are the most.`, ['findings']);
  const findings = seen.map((finding, index) => {
    const path = ['findings', String(index), 'note'];
    return { ...finding, note: check.words(finding.note, path, longestFinding) };
  });
  const checks = checkFitOut(check, fitOut, input.fitOutChecks ?? []);
  check.done();

  const inspection = { itemId, inspectedAt, inspectorId, note };
  const { id: inspectionId } = await insertRow(work, InspectionEntity, inspection);
  await insertFindings(work, { itemId, inspectionId, seenAt: inspectedAt }, findings);
  await insertRows(
    work,
    FitOutCheckEntity,
    checks.map((one) => ({ ...one, inspectionId, itemId, checkedAt: inspectedAt })),
  );
  return inspectionId;
}
