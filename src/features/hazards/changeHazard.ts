import { recordId } from '../../api/kit/globalId.js';
import { changeRow } from '../../db/changeRow.js';
import { Checklist } from '../../db/checklist.js';
import type { UnitOfWork } from '../../db/unitOfWork.js';
import { HazardEntity } from './hazard.entity.js';
import type { ChangeHazardInput } from './hazard.inputs.js';

/** Corrects a hazard. Making it less is not possible here: that takes `clearHazard` and a check. */
export async function changeHazard(work: UnitOfWork, input: ChangeHazardInput): Promise<string> {
  const id = recordId('Hazard', input.id);
  const check = new Checklist(work);
  const note = input.note === undefined ? undefined : check.text(input.note, ['note']);
  check.done();
  await changeRow(work, HazardEntity, id, input.version, {
    ...(input.kind && { kind: input.kind }),
    ...(note !== undefined && { note }),
    ...(input.isOpenAgain === true && { clearedAt: null, clearedByCheck: null, clearedById: null }),
  });
  return id;
}
