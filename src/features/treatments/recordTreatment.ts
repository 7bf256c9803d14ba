import { itemTypes, optionalRecordId, recordId } from '../../api/kit/globalId.js';
import { pastInstant } from '../../api/kit/pastInstant.js';
import { Checklist } from '../../db/checklist.js';
import { insertRow, insertRows } from '../../db/insertRow.js';
import type { UnitOfWork } from '../../db/unitOfWork.js';
import { checkAgents, refuseMeeting } from './checkAgents.js';
import { checkAmounts } from './checkAmounts.js';
import { checkSubjects } from './checkSubjects.js';
import { readOverride } from './readOverride.js';
import { TreatmentEntity } from './treatment.entity.js';
import type { RecordTreatmentInput } from './treatment.inputs.js';
import { TreatmentAgentEntity } from './treatmentAgent.entity.js';

export async function recordTreatment(
  work: UnitOfWork,
  input: RecordTreatmentInput,
): Promise<string> {
  const itemId = recordId(itemTypes, input.itemId, ['itemId']);
  const componentId = optionalRecordId('Component', input.componentId ?? null, ['componentId']);
  const taskId = optionalRecordId('Task', input.taskId ?? null, ['taskId']);
  const findingId = optionalRecordId('Finding', input.findingId ?? null, ['findingId']);
  const treatedById = optionalRecordId('Party', input.treatedById ?? null, ['treatedById']);
  const check = new Checklist(work);
  await check.exists('item', itemId, ['itemId']);
  await checkSubjects(work, check, itemId, { componentId, taskId, findingId, treatedById });
  checkAmounts(check, input);
  const agents = checkAgents(check, input.agents);
  const override = await readOverride(check, input.override);
  const kinds = agents.map(({ kind }) => kind);
  refuseMeeting(check, kinds, input.override !== null && input.override !== undefined);
  const values = {
    itemId,
    componentId,
    taskId,
    findingId,
    treatedById,
    zone: input.zone ?? null,
    surface: check.words(input.surface, ['surface']),
    material: input.material,
    dwellMinutes: input.dwellMinutes ?? null,
    passes: input.passes,
    isRinsed: input.isRinsed,
    outcome: input.outcome,
    result: check.text(input.result, ['result']),
    remains: check.text(input.remains, ['remains']),
    treatedAt: pastInstant(check, work, input.treatedAt, ['treatedAt']),
    ...override,
  };
  check.done();
  const { id } = await insertRow(work, TreatmentEntity, values);
  await insertRows(
    work,
    TreatmentAgentEntity,
    agents.map((agent) => ({ treatmentId: id, ...agent })),
  );
  return id;
}
