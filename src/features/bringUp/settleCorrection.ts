import { changeRow } from '../../db/changeRow.js';
import { rowSourceInWork } from '../../db/rowSource.js';
import type { UnitOfWork } from '../../db/unitOfWork.js';
import { isWhollyPassed } from '../../domain/bringUp/gatesBefore.js';
import { FindingEntity } from '../findings/finding.entity.js';
import { FinalCheckEntity } from '../readiness/finalCheck.entity.js';
import { BringUpEntity } from './bringUp.entity.js';
import { closeWhenPassed } from './closeAsPassed.js';
import { findAtGate, gateNote } from './findAtGate.js';
import { otherRunOn } from './oneRunAtATime.js';
import { readStepsOfRuns, type StepOfRun } from './recordedSteps.reads.js';

/** What follows from a step that was put right: the run stands as if it had been written so. */
export async function settleCorrection(
  work: UnitOfWork,
  run: BringUpEntity,
  before: StepOfRun,
  why: string,
): Promise<void> {
  const steps = (await readStepsOfRuns(rowSourceInWork(work), [run])).get(run.id) ?? [];
  const after = steps.find(({ step }) => step.key === before.step.key);
  if (!after) throw new Error('a step was put right that the procedure does not have');
  const failed = await failAtGate(work, run, before, after);
  const finding = failed === null ? await openFinding(work, before.latest?.findingId) : null;
  const outcomes = new Map(steps.map(({ step, outcome }) => [step.key, outcome]));
  const isPassed = isWhollyPassed(run.procedure.steps, outcomes);
  if (run.status === 'PASSED' && !isPassed) await reopen(work, run, failed, why);
  else if (run.status === 'UNDER_WAY' && isPassed) {
    await closeWhenPassed(work, run);
  } else if (failed !== null && run.status !== 'ABANDONED' && run.status !== 'PASSED') {
    await changeRow(work, BringUpEntity, run.id, null, { status: 'STOPPED', reason: failed });
  } else if (finding !== null && run.status === 'STOPPED') {
    const word = after.outcome === 'PASSED' ? 'is passed as put right' : 'counts as not done';
    const reason = `“${after.step.title}” ${word}. What it opened still stands: ${finding.note}`;
    await changeRow(work, BringUpEntity, run.id, null, { reason });
  }
}

/**
 * A gate that fails as put right has a finding, opened once: what the gate wrote in it is put right
 * too while it is open. @returns what failed, where the run has to stop for it; null where not
 */
async function failAtGate(
  work: UnitOfWork,
  run: BringUpEntity,
  before: StepOfRun,
  after: StepOfRun,
): Promise<string | null> {
  if (!after.latest || after.outcome !== 'FAILED' || !after.step.isGate) return null;
  const { findingId } = after.latest;
  if (findingId === null) return findAtGate(work, run, after.latest, after);
  const finding = await openFinding(work, findingId);
  if (finding === null) return null;
  const note = gateNote(after);
  const isAsWritten = before.outcome === 'FAILED' && finding.note === gateNote(before);
  if (isAsWritten) await changeRow(work, FindingEntity, finding.id, null, { note });
  return note;
}

async function openFinding(
  work: UnitOfWork,
  id: string | null | undefined,
): Promise<FindingEntity | null> {
  if (id === null || id === undefined) return null;
  return work.manager.findOneBy(FindingEntity, { id, status: 'OPEN' });
}

/** A run that was passed by mistake goes on, and the final check that it recorded is none. */
async function reopen(
  work: UnitOfWork,
  run: BringUpEntity,
  failed: string | null,
  why: string,
): Promise<void> {
  if (run.finalCheckId !== null) {
    const note = `“${run.procedure.title}” was not passed: ${why}`;
    await changeRow(work, FinalCheckEntity, run.finalCheckId, null, { isPassed: false, note });
  }
  const open = { finalCheckId: null, endedAt: null };
  const other = await otherRunOn(work, run.itemId, run.id);
  await changeRow(
    work,
    BringUpEntity,
    run.id,
    null,
    other
      ? { ...open, status: 'ABANDONED', endedAt: work.now, reason: failed ?? why }
      : { ...open, status: failed === null ? 'UNDER_WAY' : 'STOPPED', reason: failed },
  );
}
