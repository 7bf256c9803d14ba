import { recordId } from '../../api/kit/globalId.js';
import { Checklist } from '../../db/checklist.js';
import { oneAtATime } from '../../db/oneAtATime.js';
import type { UnitOfWork } from '../../db/unitOfWork.js';
import { addPositions } from './addPositions.js';
import { checkPositions } from './checkPositions.js';
import { FitOutPositionEntity } from './fitOutPosition.entity.js';
import type { AddFitOutPositionsInput } from './fitOutPosition.inputs.js';

/** Adds positions at the end of a model's fit-out. */
export async function addFitOutPositions(
  work: UnitOfWork,
  input: AddFitOutPositionsInput,
): Promise<string> {
  const modelId = recordId('Model', input.modelId, ['modelId']);
  await oneAtATime(work, `model ${modelId}`);
  const check = new Checklist(work);
  await check.exists('model', modelId, ['modelId']);
  const positions = await checkPositions(work, check, input.positions, 'positions');
  const kept = await work.manager.findBy(FitOutPositionEntity, { modelId });
  const taken = new Set(kept.map(({ designator }) => designator));
  for (const [index, { designator }] of positions.entries()) {
    if (!taken.has(designator)) continue;
    const message = `The fit-out has ${designator} already. Change that position instead.`;
    check.add({ code: 'CONFLICT', message, path: ['positions', String(index), 'designator'] });
  }
  check.done();
  const lastOrdinal = kept.reduce((last, { ordinal }) => Math.max(last, ordinal), 0);
  await addPositions(work, modelId, positions, lastOrdinal + 1);
  return modelId;
}
