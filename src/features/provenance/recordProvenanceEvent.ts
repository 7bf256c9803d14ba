import { itemTypes, recordId } from '../../api/kit/globalId.js';
import { Checklist } from '../../db/checklist.js';
import { insertRow } from '../../db/insertRow.js';
import type { UnitOfWork } from '../../db/unitOfWork.js';
import { chooseParty } from '../parties/chooseParty.js';
import { checkEventDate } from './checkEventDate.js';
import { checkEvidence } from './checkEvidence.js';
import { ProvenanceEventEntity } from './provenanceEvent.entity.js';
import type { RecordProvenanceEventInput } from './provenanceEvent.inputs.js';

/** Something happened to an item, at a date as uncertain as it is. */
export async function recordProvenanceEvent(
  work: UnitOfWork,
  input: RecordProvenanceEventInput,
): Promise<string> {
  const itemId = recordId(itemTypes, input.itemId, ['itemId']);
  const check = new Checklist(work);
  await check.exists('item', itemId, ['itemId']);
  const date = checkEventDate(check, input.dateEdtf ?? null, work.now);
  const evidence = check.text(input.evidence, ['evidence']);
  checkEvidence(check, input.standing, evidence);
  const placeName =
    typeof input.placeName === 'string' ? check.words(input.placeName, ['placeName']) : null;
  const note = check.text(input.note, ['note']);
  const keepFrom = await chooseParty(work, check, input.fromParty, ['fromParty']);
  const keepTo = await chooseParty(work, check, input.toParty, ['toParty']);
  check.done();
  const event = await insertRow(work, ProvenanceEventEntity, {
    itemId,
    kind: input.kind,
    ...date,
    fromPartyId: await keepFrom(),
    toPartyId: await keepTo(),
    placeName,
    standing: input.standing,
    evidence,
    note,
  });
  return event.id;
}
