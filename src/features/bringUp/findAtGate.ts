import { changeRow } from '../../db/changeRow.js';
import type { UnitOfWork } from '../../db/unitOfWork.js';
import { insertFindings } from '../findings/insertFindings.js';
import { longestFinding } from '../findings/longestFinding.js';
import type { BringUpEntity } from './bringUp.entity.js';
import { BringUpStepEntity } from './bringUpStep.entity.js';
import type { StepOfRun } from './recordedSteps.reads.js';
import { whatFailed } from './whatFailed.js';

/** Opens the finding of a gate that failed, with its hazard. @returns what failed, in a sentence */
export async function findAtGate(
  work: UnitOfWork,
  { itemId }: Pick<BringUpEntity, 'itemId'>,
  row: Pick<BringUpStepEntity, 'id' | 'doneAt'>,
  failed: StepOfRun,
): Promise<string> {
  const { zone, hazardIfFailed } = failed.step;
  const note = gateNote(failed);
  const seen = { itemId, inspectionId: null, seenAt: row.doneAt };
  const hazards = hazardIfFailed === null ? [] : [hazardIfFailed];
  const finding = { zone, severity: 'BLOCKING' as const, note, hazards };
  const [findingId = null] = await insertFindings(work, seen, [finding]);
  await changeRow(work, BringUpStepEntity, row.id, null, { findingId });
  return note;
}

/** What the finding of a failed gate says. */
export const gateNote = (failed: StepOfRun): string => whatFailed(failed).slice(0, longestFinding);
