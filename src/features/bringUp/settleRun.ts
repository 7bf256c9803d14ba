import { globalId } from '../../api/kit/globalId.js';
import { changeRow } from '../../db/changeRow.js';
import { rowSourceInWork } from '../../db/rowSource.js';
import type { UnitOfWork } from '../../db/unitOfWork.js';
import { isWhollyPassed } from '../../domain/bringUp/gatesBefore.js';
import { insertFindings } from '../findings/insertFindings.js';
import { longestFinding } from '../findings/longestFinding.js';
import { recordFinalCheck } from '../readiness/recordFinalCheck.js';
import { BringUpEntity } from './bringUp.entity.js';
import { BringUpStepEntity } from './bringUpStep.entity.js';
import { readStepsOfRuns, type StepOfRun } from './recordedSteps.reads.js';
import { whatFailed } from './whatFailed.js';

/** What follows from a step that was just recorded. */
export async function settleRun(
  work: UnitOfWork,
  run: BringUpEntity,
  row: BringUpStepEntity,
): Promise<void> {
  const steps = (await readStepsOfRuns(rowSourceInWork(work), [run])).get(run.id) ?? [];
  const done = steps.find(({ step }) => step.key === row.stepKey);
  if (!done) throw new Error('a step was recorded that the procedure does not have');
  if (done.outcome === 'FAILED' && done.step.isGate) await stopAtGate(work, run, row, done);
  const outcomes = new Map(steps.map(({ step, outcome }) => [step.key, outcome]));
  if (isWhollyPassed(run.procedure.steps, outcomes)) await closeAsPassed(work, run, row);
}

async function stopAtGate(
  work: UnitOfWork,
  run: BringUpEntity,
  row: BringUpStepEntity,
  failed: StepOfRun,
): Promise<void> {
  const { zone, hazardIfFailed } = failed.step;
  const reason = whatFailed(failed).slice(0, longestFinding);
  const seen = { itemId: run.itemId, inspectionId: null, seenAt: row.doneAt };
  const hazards = hazardIfFailed === null ? [] : [hazardIfFailed];
  const [findingId = null] = await insertFindings(work, seen, [
    { zone, severity: 'BLOCKING', note: reason, hazards },
  ]);
  await changeRow(work, BringUpStepEntity, row.id, null, { findingId });
  await changeRow(work, BringUpEntity, run.id, null, { status: 'STOPPED', reason });
}

async function closeAsPassed(
  work: UnitOfWork,
  run: BringUpEntity,
  { doneAt, doneById }: BringUpStepEntity,
): Promise<void> {
  const finalCheckId = await recordFinalCheck(work, {
    ...run.procedure.finalCheck,
    itemId: globalId('Rig', run.itemId),
    checkedAt: new Date(doneAt),
    isPassed: true,
    checkedById: doneById === null ? null : globalId('Party', doneById),
    note: `Every step of “${run.procedure.title}” was passed.`,
  });
  await changeRow(work, BringUpEntity, run.id, null, {
    status: 'PASSED',
    endedAt: doneAt,
    finalCheckId,
    reason: null,
  });
}
