import { checkedRecordId } from '../../api/kit/checkedRecordId.js';
import { itemTypes } from '../../api/kit/globalId.js';
import { Checklist } from '../../db/checklist.js';
import { insertRow } from '../../db/insertRow.js';
import type { UnitOfWork } from '../../db/unitOfWork.js';
import { checkPastDay } from '../money/checkPastDay.js';
import { ProjectEntity } from './project.entity.js';
import type { OpenProjectInput } from './project.inputs.js';
import { readCeilings } from './readCeilings.js';

export async function openProject(work: UnitOfWork, input: OpenProjectInput): Promise<string> {
  const check = new Checklist(work);
  const itemId = checkedRecordId(check, itemTypes, input.itemId, ['itemId']);
  await check.exists('item', itemId, ['itemId']);
  const title = check.words(input.title, ['title']);
  const startedOn = input.startedOn ?? null;
  if (startedOn !== null) checkPastDay(check, startedOn, work.now, ['startedOn']);
  const ceilings = readCeilings(check, input);
  const decision = check.text(input.decision, ['decision']);
  check.done();
  const project = await insertRow(work, ProjectEntity, {
    itemId: itemId as string,
    title,
    targetStandard: input.targetStandard,
    status: startedOn === null ? 'PLANNED' : 'ACTIVE',
    startedOn,
    closedAt: null,
    ceilingMinorUnits: null,
    ceilingCurrency: null,
    ceilingMinutes: null,
    ...ceilings,
    decision,
  });
  return project.id;
}
