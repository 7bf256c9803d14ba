import { checkedRecordId } from '../../api/kit/checkedRecordId.js';
import { splitGlobalId } from '../../api/kit/globalId.js';
import { Checklist } from '../../db/checklist.js';
import { insertRow } from '../../db/insertRow.js';
import { oneAtATime } from '../../db/oneAtATime.js';
import { queryInWork } from '../../db/queryInWork.js';
import type { UnitOfWork } from '../../db/unitOfWork.js';
import type { Reads } from '../../api/kit/typeReads.js';
import { AttachmentEntity } from './attachment.entity.js';
import type { AttachFileInput } from './attachment.inputs.js';
import { checkBefore } from './checkBefore.js';

/**
 * Shows a stored file with a record. The same file is shown with the same record once: attaching
 * it again finds the attachment that is there.
 */
export async function attachFile(
  work: UnitOfWork,
  input: AttachFileInput,
  reads: Reads,
): Promise<string> {
  const check = new Checklist(work);
  const fileId = checkedRecordId(check, 'StoredFile', input.fileId, ['fileId']);
  await check.exists('stored_file', fileId, ['fileId']);
  const subject = splitGlobalId(input.toId);
  const table = subject === null ? undefined : reads.get(subject.typeName)?.table;
  if (!subject || table === undefined) {
    check.refuse('This is not the id of a record. Use the id that the API gave for it.', ['toId']);
  } else {
    await check.exists(table, subject.id, ['toId']);
  }
  const caption = check.text(input.caption, ['caption']);
  const beforeId = checkedRecordId(check, 'Attachment', input.beforeId, ['beforeId']);
  const role = input.role ?? (beforeId === null ? await usualRole(work, fileId) : 'AFTER');
  await checkBefore(work, check, beforeId, role);
  check.done();
  if (!subject || fileId === null) throw new Error('checked above');
  await oneAtATime(work, `attachments ${subject.id}`);
  const there = await attachmentsOf(work, subject.id);
  const same = there.find((one) => one.fileId === fileId);
  if (same) return same.id;
  const { id } = await insertRow(work, AttachmentEntity, {
    fileId,
    subjectType: table === 'item' ? 'Item' : subject.typeName,
    subjectId: subject.id,
    role,
    caption,
    beforeId,
    ordinal: input.ordinal ?? Math.max(0, ...there.map(({ ordinal }) => ordinal)) + 1,
    detachedAt: null,
  });
  return id;
}

/** What is attached to a record now. */
const attachmentsOf = (work: UnitOfWork, subjectId: string) =>
  queryInWork<{ id: string; fileId: string; ordinal: number }>(
    work,
    `SELECT id AS "id", file_id AS "fileId", ordinal AS "ordinal" FROM attachment
     WHERE subject_id = ? AND detached_at IS NULL`,
    [subjectId],
  );

/** A picture shows the thing unless said otherwise; anything else is a paper. */
async function usualRole(work: UnitOfWork, fileId: string | null): Promise<'OVERALL' | 'DOCUMENT'> {
  const pictures = await queryInWork(
    work,
    'SELECT id FROM stored_file WHERE id = ? AND width_pixels IS NOT NULL',
    [fileId],
  );
  return pictures.length > 0 ? 'OVERALL' : 'DOCUMENT';
}
