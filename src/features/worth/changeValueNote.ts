import { recordId } from '../../api/kit/globalId.js';
import { isGiven } from '../../api/kit/isGiven.js';
import { changeRow } from '../../db/changeRow.js';
import { Checklist } from '../../db/checklist.js';
import type { UnitOfWork } from '../../db/unitOfWork.js';
import { readValue } from './readValue.js';
import { ValueNoteEntity } from './valueNote.entity.js';
import type { ChangeValueNoteInput } from './worth.inputs.js';

export async function changeValueNote(
  work: UnitOfWork,
  { id: globalId, version, reads, isStruck }: ChangeValueNoteInput,
): Promise<string> {
  const id = recordId('ValueNote', globalId);
  const check = new Checklist(work);
  const value = isGiven(reads) ? await readValue(check, reads, work.now, ['reads']) : {};
  check.done();
  await changeRow(work, ValueNoteEntity, id, version, {
    ...value,
    ...(isGiven(isStruck) && { struckAt: isStruck ? work.now : null }),
  });
  return id;
}
