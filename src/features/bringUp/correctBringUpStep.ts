import { optionalRecordId, recordId } from '../../api/kit/globalId.js';
import { changeRow } from '../../db/changeRow.js';
import { Checklist } from '../../db/checklist.js';
import { Refusal } from '../../db/refusal.js';
import { rowSourceInWork } from '../../db/rowSource.js';
import { touchRow } from '../../db/touchRow.js';
import type { UnitOfWork } from '../../db/unitOfWork.js';
import type { CorrectBringUpStepInput } from './bringUp.inputs.js';
import { BringUpEntity } from './bringUp.entity.js';
import { BringUpStepEntity } from './bringUpStep.entity.js';
import { checkStep } from './checkStep.js';
import { oneRunAtATime } from './oneRunAtATime.js';
import { readStepsOfRuns, type RecordedStepRow, type StepOfRun } from './recordedSteps.reads.js';
import { replaceReadings } from './replaceReadings.js';
import { settleCorrection } from './settleCorrection.js';
import { stepDoneAt } from './stepDoneAt.js';

/**
 * Puts right what was written down by mistake of a step; what it said stays with it. How the step
 * came out is computed anew, and the run follows; a finding that a gate opened is settled by a
 * person alone, whatever the correction says. @returns the id of the bring-up
 */
export async function correctBringUpStep(
  work: UnitOfWork,
  input: CorrectBringUpStepInput,
): Promise<string> {
  const id = recordId('BringUp', input.bringUpId, ['bringUpId']);
  const found = await work.manager.findOneBy(BringUpEntity, { id });
  if (!found) throw Refusal.notFound('bring-up', ['bringUpId']);
  await oneRunAtATime(work, found.itemId);
  const run = await touchRow(work, BringUpEntity, id, input.version);
  const before = await stepThatSaid(work, run, input.stepKey);
  const { step, latest } = before;
  const check = new Checklist(work);
  const reason = check.words(input.reason, ['reason'], 1000);
  const hasMore = input.holds.length > 0 || input.readings.length > 0;
  if (input.wasNeverDone) {
    const message = 'A step that was never done has no statements and no readings.';
    check.that(!hasMore, message, ['wasNeverDone']);
  }
  const readings = input.wasNeverDone ? [] : checkStep(check, step, input);
  const doneAt = input.doneAt ? stepDoneAt(check, work, run, input.doneAt) : latest.doneAt;
  const doneById = optionalRecordId('Party', input.doneById, ['doneById']);
  await check.exists('party', doneById ?? null, ['doneById']);
  const note = input.note === undefined ? latest.note : check.text(input.note, ['note']);
  check.done();

  const done = { doneAt, doneById: doneById === undefined ? latest.doneById : doneById };
  const readingIds = await replaceReadings(work, run, before, { ...done, readings });
  const said = {
    holds: latest.holds,
    readings: before.readings.map(({ quantity, value, unit }) => ({ quantity, value, unit })),
    outcome: before.outcome,
    doneAt: latest.doneAt,
    note: latest.note,
    replacedAt: work.now,
    reason,
    wasNeverDone: input.wasNeverDone,
  };
  const earlierVersions = [...latest.earlierVersions, said];
  await changeRow(work, BringUpStepEntity, latest.id, null, {
    readingIds,
    earlierVersions,
    ...(input.wasNeverDone ? { withdrawnAt: work.now } : { ...done, holds: input.holds, note }),
  });
  await settleCorrection(work, run, before, reason);
  return id;
}

/** A step of which something is recorded, as it stands. */
async function stepThatSaid(
  work: UnitOfWork,
  run: BringUpEntity,
  stepKey: string,
): Promise<StepOfRun & { latest: RecordedStepRow }> {
  const steps = (await readStepsOfRuns(rowSourceInWork(work), [run])).get(run.id) ?? [];
  const found = steps.find(({ step }) => step.key === stepKey);
  if (found?.latest) return { ...found, latest: found.latest };
  const recorded = steps.flatMap(({ step, latest }) => (latest === null ? [] : [step.key]));
  throw Refusal.invalid(
    `Nothing is recorded of “${stepKey.slice(0, 60)}” that could be put right. Recorded are: ${recorded.join(', ') || 'no steps yet'}.`,
    ['stepKey'],
  );
}
