import { recordId } from '../../api/kit/globalId.js';
import { isGiven } from '../../api/kit/isGiven.js';
import { changeRow } from '../../db/changeRow.js';
import { Checklist } from '../../db/checklist.js';
import type { UnitOfWork } from '../../db/unitOfWork.js';
import { PlannedCostEntity } from './plannedCost.entity.js';
import type { ChangePlannedCostInput } from './plannedCost.inputs.js';
import { readThreePoints } from './readThreePoints.js';

export async function changePlannedCost(
  work: UnitOfWork,
  input: ChangePlannedCostInput,
): Promise<string> {
  const id = recordId('PlannedCost', input.id);
  const { description, estimate, neededFrom, isSettled, note } = input;
  const check = new Checklist(work);
  const changes = {
    ...(isGiven(description) && { description: check.words(description, ['description']) }),
    ...(isGiven(estimate) && readThreePoints(check, estimate, ['estimate'])),
    ...(neededFrom !== undefined && { neededFrom }),
    ...(isGiven(isSettled) && { settledAt: isSettled ? work.now : null }),
    ...(note !== undefined && { note: check.text(note, ['note']) }),
  };
  check.done();
  await changeRow(work, PlannedCostEntity, id, input.version, changes);
  return id;
}
