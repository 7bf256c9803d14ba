import { Checklist } from '../../db/checklist.js';
import { insertRow } from '../../db/insertRow.js';
import type { UnitOfWork } from '../../db/unitOfWork.js';
import { PartyEntity } from './party.entity.js';
import type { CreatePartyInput } from './party.inputs.js';

export async function createParty(work: UnitOfWork, input: CreatePartyInput): Promise<string> {
  const check = new Checklist(work);
  const name = check.words(input.name, ['name']);
  const contact = check.text(input.contact, ['contact']);
  const note = check.text(input.note, ['note']);
  check.done();
  const { kind } = input;
  const party = await insertRow(work, PartyEntity, { kind, name, contact, note, retiredAt: null });
  return party.id;
}
