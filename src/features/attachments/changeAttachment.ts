import { optionalRecordId, recordId } from '../../api/kit/globalId.js';
import { isGiven } from '../../api/kit/isGiven.js';
import { changeRow } from '../../db/changeRow.js';
import { Checklist } from '../../db/checklist.js';
import { Refusal } from '../../db/refusal.js';
import type { UnitOfWork } from '../../db/unitOfWork.js';
import { AttachmentEntity } from './attachment.entity.js';
import type { ChangeAttachmentInput } from './attachment.inputs.js';
import { checkBefore } from './checkBefore.js';

/** Corrects what is said of an attachment, or takes it off the record; the file stays kept. */
export async function changeAttachment(
  work: UnitOfWork,
  input: ChangeAttachmentInput,
): Promise<string> {
  const id = recordId('Attachment', input.id);
  const now = await work.manager.findOneBy(AttachmentEntity, { id });
  if (!now) throw Refusal.notFound('attachment');
  const check = new Checklist(work);
  const caption = input.caption === undefined ? undefined : check.text(input.caption, ['caption']);
  const beforeId = optionalRecordId('Attachment', input.beforeId, ['beforeId']);
  const role = input.role ?? now.role;
  await checkBefore(work, check, beforeId === undefined ? now.beforeId : beforeId, role, id);
  check.done();
  await changeRow(work, AttachmentEntity, id, input.version, {
    ...(caption !== undefined && { caption }),
    ...(beforeId !== undefined && { beforeId }),
    ...(isGiven(input.role) && { role }),
    ...(isGiven(input.ordinal) && { ordinal: input.ordinal }),
    ...(isGiven(input.isDetached) && { detachedAt: input.isDetached ? work.now : null }),
  });
  return id;
}
