import { changeRow } from '../../db/changeRow.js';
import { rowSourceInWork } from '../../db/rowSource.js';
import type { UnitOfWork } from '../../db/unitOfWork.js';
import { BringUpEntity } from './bringUp.entity.js';
import type { BringUpStepEntity } from './bringUpStep.entity.js';
import { closeWhenPassed } from './closeAsPassed.js';
import { findAtGate } from './findAtGate.js';
import { readStepsOfRuns } from './recordedSteps.reads.js';

/** What follows from a step that was just recorded. */
export async function settleRun(
  work: UnitOfWork,
  run: BringUpEntity,
  row: BringUpStepEntity,
): Promise<void> {
  const steps = (await readStepsOfRuns(rowSourceInWork(work), [run])).get(run.id) ?? [];
  const done = steps.find(({ step }) => step.key === row.stepKey);
  if (!done) throw new Error('a step was recorded that the procedure does not have');
  if (done.outcome === 'FAILED' && done.step.isGate) {
    const reason = await findAtGate(work, run, row, done);
    await changeRow(work, BringUpEntity, run.id, null, { status: 'STOPPED', reason });
    return;
  }
  await closeWhenPassed(work, run);
}
