import { recordId } from '../../api/kit/globalId.js';
import { changeRow } from '../../db/changeRow.js';
import { Checklist } from '../../db/checklist.js';
import type { UnitOfWork } from '../../db/unitOfWork.js';
import { BaselineEntity } from './baseline.entity.js';
import type { ChangeBaselineInput } from './baseline.inputs.js';

/** A kept plan stays as it was kept, or it would be none; only the remarks can be corrected. */
export async function changeBaseline(
  work: UnitOfWork,
  input: ChangeBaselineInput,
): Promise<string> {
  const id = recordId('Baseline', input.id);
  const check = new Checklist(work);
  const note = check.text(input.note, ['note']);
  check.done();
  await changeRow(work, BaselineEntity, id, input.version, { note });
  return id;
}
