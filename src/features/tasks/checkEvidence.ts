import { checkedRecordId } from '../../api/kit/checkedRecordId.js';
import type { Checklist } from '../../db/checklist.js';
import { queryInWork } from '../../db/queryInWork.js';
import type { UnitOfWork } from '../../db/unitOfWork.js';
import type { ProgressEvidenceKind } from './progressEvidenceKind.js';
import type { StatePercentInput } from './taskProgress.inputs.js';

const longestEvidence = 10_000;

export interface KeptEvidence {
  percentEvidenceKind: ProgressEvidenceKind;
  percentEvidence: string | null;
  percentEvidenceReadingId: string | null;
}

/** What is to show a stated share: a note, a reading of the same item, or both. */
export async function checkEvidence(
  work: UnitOfWork,
  check: Checklist,
  input: StatePercentInput,
): Promise<KeptEvidence> {
  const { evidence, readingId } = input;
  const hasNote = evidence !== null && evidence !== undefined;
  const hasReading = readingId !== null && readingId !== undefined;
  check.that(
    hasNote || hasReading,
    'Say what shows it: a sentence (evidence) or a reading (readingId).',
    ['evidence'],
  );
  const note = hasNote ? check.words(evidence, ['evidence'], longestEvidence) : null;
  const id = checkedRecordId(check, 'Reading', readingId, ['readingId']);
  if (id !== null && !(await isReadingOfTask(work, id, input.id))) {
    check.refuse(
      'There is no such reading of the item that this task is about, or of a part in it.',
      ['readingId'],
    );
  }
  return {
    percentEvidenceKind: hasReading ? 'READING' : 'NOTE',
    percentEvidence: note,
    percentEvidenceReadingId: id,
  };
}

/** Taken on the task's item, or on a component that sits or sat in it. */
async function isReadingOfTask(
  work: UnitOfWork,
  readingId: string,
  task: string,
): Promise<boolean> {
  const found = await queryInWork(
    work,
    `SELECT reading.id FROM task JOIN project ON project.id = task.project_id
     JOIN reading ON reading.id = ? AND (reading.item_id = project.item_id OR EXISTS (
       SELECT 1 FROM fitting WHERE fitting.component_id = reading.component_id
         AND fitting.item_id = project.item_id))
     WHERE task.id = ?`,
    [readingId, task.slice('Task_'.length)],
  );
  return found.length > 0;
}
