import { optionalRecordId, recordId } from '../../api/kit/globalId.js';
import { isGiven } from '../../api/kit/isGiven.js';
import { pastInstant } from '../../api/kit/pastInstant.js';
import { changeRow } from '../../db/changeRow.js';
import { Checklist } from '../../db/checklist.js';
import { insertRows } from '../../db/insertRow.js';
import { oneAtATime } from '../../db/oneAtATime.js';
import { Refusal } from '../../db/refusal.js';
import { removeRow } from '../../db/removeRow.js';
import { touchRow } from '../../db/touchRow.js';
import type { UnitOfWork } from '../../db/unitOfWork.js';
import { checkAgents, refuseMeeting } from './checkAgents.js';
import { checkAmounts } from './checkAmounts.js';
import { checkSubjects } from './checkSubjects.js';
import { readOverride } from './readOverride.js';
import { TreatmentEntity } from './treatment.entity.js';
import type { ChangeTreatmentInput } from './treatment.inputs.js';
import { TreatmentAgentEntity } from './treatmentAgent.entity.js';

/** New agents are checked anew: an override was given for those that it was given for. */
export async function changeTreatment(
  work: UnitOfWork,
  input: ChangeTreatmentInput,
): Promise<string> {
  const id = recordId('Treatment', input.id);
  const subjects = {
    componentId: optionalRecordId('Component', input.componentId, ['componentId']),
    taskId: optionalRecordId('Task', input.taskId, ['taskId']),
    findingId: optionalRecordId('Finding', input.findingId, ['findingId']),
    treatedById: optionalRecordId('Party', input.treatedById, ['treatedById']),
  };
  await oneAtATime(work, `treatment ${id}`);
  const treatment = await work.manager.findOneBy(TreatmentEntity, { id });
  if (!treatment) throw Refusal.notFound('treatment');
  const check = new Checklist(work);
  await checkSubjects(work, check, treatment.itemId, subjects);
  checkAmounts(check, input);
  const override = await readOverride(check, input.override);
  const before = await work.manager.findBy(TreatmentAgentEntity, { treatmentId: id });
  const agents = isGiven(input.agents) ? checkAgents(check, input.agents) : null;
  const isOverridden = input.override !== null && input.override !== undefined;
  if (agents !== null || isOverridden) {
    refuseMeeting(
      check,
      (agents ?? before).map(({ kind }) => kind),
      isOverridden,
    );
  }
  const { surface, material, dwellMinutes, passes, isRinsed, outcome, zone } = input;
  const changes = {
    ...Object.fromEntries(Object.entries(subjects).filter(([, value]) => value !== undefined)),
    ...(isGiven(surface) && { surface: check.words(surface, ['surface']) }),
    ...(isGiven(material) && { material }),
    ...(zone !== undefined && { zone }),
    ...(dwellMinutes !== undefined && { dwellMinutes }),
    ...(isGiven(passes) && { passes }),
    ...(isGiven(isRinsed) && { isRinsed }),
    ...(isGiven(outcome) && { outcome }),
    ...(input.result !== undefined && { result: check.text(input.result, ['result']) }),
    ...(input.remains !== undefined && { remains: check.text(input.remains, ['remains']) }),
    ...(isGiven(input.treatedAt) && {
      treatedAt: pastInstant(check, work, input.treatedAt, ['treatedAt']),
    }),
    ...((agents !== null || isOverridden) && override),
  };
  check.done();
  const after = await changeRow(work, TreatmentEntity, id, input.version, changes);
  if (agents === null) return id;
  if (after.version === treatment.version) await touchRow(work, TreatmentEntity, id, null);
  for (const agent of before) await removeRow(work, TreatmentAgentEntity, agent.id);
  await insertRows(
    work,
    TreatmentAgentEntity,
    agents.map((agent) => ({ treatmentId: id, ...agent })),
  );
  return id;
}
