import { recordId } from '../../api/kit/globalId.js';
import { Checklist } from '../../db/checklist.js';
import { insertRow } from '../../db/insertRow.js';
import type { UnitOfWork } from '../../db/unitOfWork.js';
import { chooseParty } from '../parties/chooseParty.js';
import { EventPartyEntity } from './eventParty.entity.js';
import type { RecordEventPartyInput } from './eventParty.type.js';

/** Somebody had a part in an event. */
export async function recordEventParty(
  work: UnitOfWork,
  input: RecordEventPartyInput,
): Promise<string> {
  const eventId = recordId('ProvenanceEvent', input.eventId, ['eventId']);
  const check = new Checklist(work);
  await check.exists('provenance_event', eventId, ['eventId']);
  const keepParty = await chooseParty(work, check, input.party, ['party']);
  const note = check.text(input.note, ['note']);
  check.done();
  const partyId = (await keepParty()) ?? '';
  const values = { eventId, partyId, role: input.role, note };
  return (await insertRow(work, EventPartyEntity, values)).id;
}
