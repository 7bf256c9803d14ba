import { recordId } from '../../api/kit/globalId.js';
import { isGiven } from '../../api/kit/isGiven.js';
import { changeRow } from '../../db/changeRow.js';
import { Checklist } from '../../db/checklist.js';
import type { UnitOfWork } from '../../db/unitOfWork.js';
import { PartyEntity } from './party.entity.js';
import type { ChangePartyInput } from './party.inputs.js';

export async function changeParty(work: UnitOfWork, input: ChangePartyInput): Promise<string> {
  const id = recordId('Party', input.id);
  const check = new Checklist(work);
  const { name, kind, contact, note, isRetired } = input;
  const changes = {
    ...(isGiven(name) && { name: check.words(name, ['name']) }),
    ...(isGiven(kind) && { kind }),
    ...(contact !== undefined && { contact: check.text(contact, ['contact']) }),
    ...(note !== undefined && { note: check.text(note, ['note']) }),
    ...(isGiven(isRetired) && { retiredAt: isRetired ? work.now : null }),
  };
  check.done();
  await changeRow(work, PartyEntity, id, input.version, changes);
  return id;
}
