import { globalId } from '../../api/kit/globalId.js';
import type { UnitOfWork } from '../../db/unitOfWork.js';
import { recordReadings } from '../readings/recordReadings.js';
import type { BringUpEntity } from './bringUp.entity.js';
import type { CheckedReading } from './checkStep.js';
import type { ProcedureStep } from './procedureShape.js';

/** Keeps the readings of a step as readings of the item. @returns their ids, in order */
export async function keepReadings(
  work: UnitOfWork,
  run: BringUpEntity,
  step: ProcedureStep,
  done: { readings: CheckedReading[]; doneAt: string; doneById: string | null },
): Promise<string[]> {
  if (done.readings.length === 0) return [];
  // The id of an item names it whichever kind stands before it.
  const itemId = globalId('Rig', run.itemId);
  const takenById = done.doneById === null ? null : globalId('Party', done.doneById);
  const method = `${run.procedure.title}: ${step.title}`.slice(0, 200);
  const takenAt = new Date(done.doneAt);
  return recordReadings(work, {
    readings: done.readings.map((one) => ({ ...one, itemId, takenById, takenAt, method })),
  });
}
