import { globalId } from '../../api/kit/globalId.js';
import { changeRow } from '../../db/changeRow.js';
import { rowSourceInWork } from '../../db/rowSource.js';
import type { UnitOfWork } from '../../db/unitOfWork.js';
import { isWhollyPassed } from '../../domain/bringUp/gatesBefore.js';
import { recordFinalCheck } from '../readiness/recordFinalCheck.js';
import { BringUpEntity } from './bringUp.entity.js';
import { readStepsOfRuns } from './recordedSteps.reads.js';

/**
 * A run whose steps are all passed is closed, as of the latest of them: the last one may have been
 * put right while the run stood still, so that no step is left to record.
 */
export async function closeWhenPassed(work: UnitOfWork, run: BringUpEntity): Promise<void> {
  const steps = (await readStepsOfRuns(rowSourceInWork(work), [run])).get(run.id) ?? [];
  const outcomes = new Map(steps.map(({ step, outcome }) => [step.key, outcome]));
  if (!isWhollyPassed(run.procedure.steps, outcomes)) return;
  const done = steps.flatMap(({ latest }) => latest ?? []);
  await closeAsPassed(
    work,
    run,
    done.reduce((one, other) => (one.doneAt > other.doneAt ? one : other)),
  );
}

/** Every step is passed: the final check that the procedure names is recorded, and the run closed. */
async function closeAsPassed(
  work: UnitOfWork,
  run: BringUpEntity,
  { doneAt, doneById }: { doneAt: string; doneById: string | null },
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
