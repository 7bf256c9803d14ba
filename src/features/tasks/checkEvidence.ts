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
  percentEvidenceAttachmentId: string | null;
}

/** What is to show a stated share: a note, a reading of the same item, a photograph, or several. */
export async function checkEvidence(
  work: UnitOfWork,
  check: Checklist,
  input: StatePercentInput,
): Promise<KeptEvidence> {
  const { evidence, readingId, attachmentId } = input;
  const hasNote = evidence !== null && evidence !== undefined;
  const hasReading = readingId !== null && readingId !== undefined;
  const hasPhotograph = attachmentId !== null && attachmentId !== undefined;
  check.that(
    hasNote || hasReading || hasPhotograph,
    'Say what shows it: a sentence (evidence), a reading (readingId) or a photograph (attachmentId).',
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
  const photographId = checkedRecordId(check, 'Attachment', attachmentId, ['attachmentId']);
  if (photographId !== null && !(await isPhotographOfTask(work, photographId, input.id))) {
    check.refuse(
      'There is no such photograph of this task, its item, a part in it or a finding of it. Attach it there first.',
      ['attachmentId'],
    );
  }
  return {
    percentEvidenceKind: hasReading ? 'READING' : hasPhotograph ? 'PHOTOGRAPH' : 'NOTE',
    percentEvidence: note,
    percentEvidenceReadingId: id,
    percentEvidenceAttachmentId: photographId,
  };
}

/** A picture, still attached, of the task or of anything that the task is about. */
async function isPhotographOfTask(
  work: UnitOfWork,
  attachmentId: string,
  task: string,
): Promise<boolean> {
  const found = await queryInWork(
    work,
    `SELECT attachment.id FROM task JOIN project ON project.id = task.project_id
     JOIN attachment ON attachment.id = ? AND attachment.detached_at IS NULL
     JOIN stored_file ON stored_file.id = attachment.file_id
       AND stored_file.width_pixels IS NOT NULL
     WHERE task.id = ? AND (
       attachment.subject_id IN (task.id, project.id, project.item_id)
       OR EXISTS (SELECT 1 FROM fitting WHERE fitting.component_id = attachment.subject_id
         AND fitting.item_id = project.item_id)
       OR EXISTS (SELECT 1 FROM finding WHERE finding.id = attachment.subject_id
         AND finding.item_id = project.item_id)
       OR EXISTS (SELECT 1 FROM inspection WHERE inspection.id = attachment.subject_id
         AND inspection.item_id = project.item_id))`,
    [attachmentId, task.slice('Task_'.length)],
  );
  return found.length > 0;
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
