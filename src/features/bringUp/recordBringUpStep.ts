import { checkedRecordId } from '../../api/kit/checkedRecordId.js';
import { recordId } from '../../api/kit/globalId.js';
import { sentBefore } from '../../api/kit/sentBefore.js';
import { Checklist } from '../../db/checklist.js';
import { insertRow } from '../../db/insertRow.js';
import { Refusal } from '../../db/refusal.js';
import { rowSourceInWork } from '../../db/rowSource.js';
import type { UnitOfWork } from '../../db/unitOfWork.js';
import type { RecordBringUpStepInput } from './bringUp.inputs.js';
import { BringUpEntity } from './bringUp.entity.js';
import { BringUpStepEntity } from './bringUpStep.entity.js';
import { checkStep } from './checkStep.js';
import { keepReadings } from './keepReadings.js';
import { oneRunAtATime } from './oneRunAtATime.js';
import { readStepsOfRuns } from './recordedSteps.reads.js';
import { refuseStep } from './refuseStep.js';
import { settleRun } from './settleRun.js';
import { stepDoneAt } from './stepDoneAt.js';

/**
 * Keeps a step with its readings, and lets follow what must: a failed gate stops the run and opens
 * a finding; the last step passed records the final check. @returns the id of the bring-up
 */
export async function recordBringUpStep(
  work: UnitOfWork,
  input: RecordBringUpStepInput,
): Promise<string> {
  const { known, key, digest } = await sentBefore(work, BringUpStepEntity, input);
  if (known) return known.bringUpId;
  const id = recordId('BringUp', input.bringUpId, ['bringUpId']);
  const found = await work.manager.findOneBy(BringUpEntity, { id });
  if (!found) throw Refusal.notFound('bring-up', ['bringUpId']);
  await oneRunAtATime(work, found.itemId);
  const run = await work.manager.findOneByOrFail(BringUpEntity, { id });
  const source = rowSourceInWork(work);
  const before = (await readStepsOfRuns(source, [run])).get(id) ?? [];
  const step = await refuseStep(work, run, before, input.stepKey);

  const check = new Checklist(work);
  const readings = checkStep(check, step, input);
  const doneAt = stepDoneAt(check, work, run, input.doneAt);
  const doneById = checkedRecordId(check, 'Party', input.doneById, ['doneById']);
  await check.exists('party', doneById, ['doneById']);
  const note = check.text(input.note, ['note']);
  check.done();

  const readingIds = await keepReadings(work, run, step, { readings, doneAt, doneById });
  const kept = { key, digest, bringUpId: id, stepKey: step.key, holds: input.holds, readingIds };
  const row = await insertRow(work, BringUpStepEntity, {
    ...kept,
    doneAt,
    doneById,
    findingId: null,
    note,
    earlierVersions: null,
    withdrawnAt: null,
  });
  await settleRun(work, run, row);
  return id;
}
