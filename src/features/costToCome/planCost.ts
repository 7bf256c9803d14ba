import { recordId } from '../../api/kit/globalId.js';
import { Checklist } from '../../db/checklist.js';
import { insertRow } from '../../db/insertRow.js';
import type { UnitOfWork } from '../../db/unitOfWork.js';
import { openProjectFor } from '../projects/openProjectFor.js';
import { PlannedCostEntity } from './plannedCost.entity.js';
import type { PlanCostInput } from './plannedCost.inputs.js';
import { readThreePoints } from './readThreePoints.js';

export async function planCost(work: UnitOfWork, input: PlanCostInput): Promise<string> {
  const projectId = recordId('Project', input.projectId, ['projectId']);
  await openProjectFor(work, projectId, ['projectId']);
  const check = new Checklist(work);
  const description = check.words(input.description, ['description']);
  const points = readThreePoints(check, input.estimate, ['estimate']);
  const note = check.text(input.note, ['note']);
  check.done();
  const { kind, neededFrom = null } = input;
  const row = { projectId, kind, description, ...points, neededFrom, settledAt: null, note };
  return (await insertRow(work, PlannedCostEntity, row)).id;
}
