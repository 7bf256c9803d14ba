import { recordId } from '../../api/kit/globalId.js';
import { isGiven } from '../../api/kit/isGiven.js';
import { changeRow } from '../../db/changeRow.js';
import { Checklist } from '../../db/checklist.js';
import type { UnitOfWork } from '../../db/unitOfWork.js';
import { EventPartyEntity } from './eventParty.entity.js';
import type { ChangeEventPartyInput } from './eventParty.type.js';

export async function changeEventParty(
  work: UnitOfWork,
  input: ChangeEventPartyInput,
): Promise<string> {
  const id = recordId('EventParty', input.id);
  const check = new Checklist(work);
  const note = check.text(input.note, ['note']);
  check.done();
  await changeRow(work, EventPartyEntity, id, input.version, {
    ...(isGiven(input.role) && { role: input.role }),
    ...(input.note !== undefined && { note }),
  });
  return id;
}
