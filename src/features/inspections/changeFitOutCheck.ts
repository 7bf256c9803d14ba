import { recordId } from '../../api/kit/globalId.js';
import { changeRow } from '../../db/changeRow.js';
import { Checklist } from '../../db/checklist.js';
import type { UnitOfWork } from '../../db/unitOfWork.js';
import { FitOutCheckEntity } from './fitOutCheck.entity.js';
import type { ChangeFitOutCheckInput } from './inspection.inputs.js';

/** Corrects what was ticked off by mistake. A later look is a new inspection. */
export async function changeFitOutCheck(
  work: UnitOfWork,
  input: ChangeFitOutCheckInput,
): Promise<string> {
  const id = recordId('FitOutCheck', input.id);
  const check = new Checklist(work);
  const note = input.note === undefined ? undefined : check.text(input.note, ['note']);
  check.done();
  await changeRow(work, FitOutCheckEntity, id, input.version, {
    ...(input.state && { state: input.state }),
    ...(note !== undefined && { note }),
  });
  return id;
}
