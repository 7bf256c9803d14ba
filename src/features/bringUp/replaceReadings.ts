import { changeRow } from '../../db/changeRow.js';
import { listParameter } from '../../db/dialect.js';
import { Refusal } from '../../db/refusal.js';
import { removeRow } from '../../db/removeRow.js';
import { rowSourceInWork } from '../../db/rowSource.js';
import type { UnitOfWork } from '../../db/unitOfWork.js';
import { ReadingEntity } from '../readings/reading.entity.js';
import type { BringUpEntity } from './bringUp.entity.js';
import type { CheckedReading } from './checkStep.js';
import { keepReadings } from './keepReadings.js';
import type { JudgedStepReading, StepOfRun } from './recordedSteps.reads.js';

/**
 * The readings of a step as they really were: each one put right in its place, so that whatever
 * counts readings counts it once; one too many goes, and the history keeps it.
 * @returns the ids of those that the step has now, in order
 */
export async function replaceReadings(
  work: UnitOfWork,
  run: BringUpEntity,
  { step, readings: before }: StepOfRun,
  { readings, ...done }: { readings: CheckedReading[]; doneAt: string; doneById: string | null },
): Promise<string[]> {
  const left = [...before];
  const pairs = readings.map((reading) => {
    const place = left.findIndex(({ quantity }) => quantity === reading.quantity);
    return { reading, old: place === -1 ? undefined : left.splice(place, 1)[0] };
  });
  await refuseEvidence(work, left);
  for (const { id } of left) await removeRow(work, ReadingEntity, id);
  const fresh = pairs.filter(({ old }) => old === undefined).map(({ reading }) => reading);
  const added = await keepReadings(work, run, step, { ...done, readings: fresh });
  const ids: string[] = [];
  for (const { reading, old } of pairs) {
    if (old === undefined) {
      ids.push(added.shift() ?? '');
      continue;
    }
    const { value, unit, instrument = null, note = null } = reading;
    const { doneAt: takenAt, doneById: takenById } = done;
    const changes = { value, unit, instrument, note, takenAt, takenById };
    await changeRow(work, ReadingEntity, old.id, null, changes);
    ids.push(old.id);
  }
  return ids;
}

/** A reading that a task rests on is not taken away under it. */
async function refuseEvidence(
  work: UnitOfWork,
  surplus: readonly JudgedStepReading[],
): Promise<void> {
  if (surplus.length === 0) return;
  const { rows, dialect } = rowSourceInWork(work);
  const [task] = await rows<{ title: string }>(
    `SELECT title AS "title" FROM task WHERE ${dialect.isAnyOf('percent_evidence_reading_id')}`,
    [listParameter(surplus.map(({ id }) => id))],
  );
  if (!task) return;
  throw Refusal.conflict(
    `A reading of this step is the evidence for how far the task “${task.title}” is. Give that task other evidence first.`,
    ['readings'],
  );
}
