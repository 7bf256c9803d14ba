import { recordId } from '../../api/kit/globalId.js';
import { changeRow } from '../../db/changeRow.js';
import { Checklist } from '../../db/checklist.js';
import type { UnitOfWork } from '../../db/unitOfWork.js';
import { checkPastDay } from '../money/checkPastDay.js';
import { ProjectEntity } from './project.entity.js';
import type { ChangeProjectInput } from './project.inputs.js';
import { readCeilings } from './readCeilings.js';

export async function changeProject(work: UnitOfWork, input: ChangeProjectInput): Promise<string> {
  const id = recordId('Project', input.id);
  const { startedOn, targetStandard, title, decision } = input;
  const check = new Checklist(work);
  if (startedOn) checkPastDay(check, startedOn, work.now, ['startedOn']);
  const changes = {
    ...(typeof title === 'string' && { title: check.words(title, ['title']) }),
    ...(targetStandard && { targetStandard }),
    ...(startedOn !== undefined && { startedOn }),
    ...(decision !== undefined && { decision: check.text(decision, ['decision']) }),
    ...readCeilings(check, input),
  };
  check.done();
  await changeRow(work, ProjectEntity, id, input.version, changes);
  return id;
}
