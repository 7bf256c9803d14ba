import { recordId } from '../../api/kit/globalId.js';
import { changeRow } from '../../db/changeRow.js';
import { Checklist } from '../../db/checklist.js';
import type { UnitOfWork } from '../../db/unitOfWork.js';
import { MoveEntity } from './move.entity.js';
import type { ChangeMoveInput } from './move.inputs.js';

/** Where a thing went is mended by moving it again; only the remarks can be corrected. */
export async function changeMove(work: UnitOfWork, input: ChangeMoveInput): Promise<string> {
  const id = recordId('Move', input.id);
  const check = new Checklist(work);
  const note = check.text(input.note, ['note']);
  check.done();
  await changeRow(work, MoveEntity, id, input.version, { note });
  return id;
}
