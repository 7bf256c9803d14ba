import { recordId } from '../../api/kit/globalId.js';
import { changeRow } from '../../db/changeRow.js';
import { Checklist } from '../../db/checklist.js';
import { Refusal } from '../../db/refusal.js';
import type { UnitOfWork } from '../../db/unitOfWork.js';
import { chooseParty } from '../parties/chooseParty.js';
import { checkEventDate } from './checkEventDate.js';
import { checkEvidence } from './checkEvidence.js';
import { ProvenanceEventEntity } from './provenanceEvent.entity.js';
import type { ChangeProvenanceEventInput } from './provenanceEvent.inputs.js';

/** Corrects what is known of an event, or what it rests on. */
export async function changeProvenanceEvent(
  work: UnitOfWork,
  input: ChangeProvenanceEventInput,
): Promise<string> {
  const id = recordId('ProvenanceEvent', input.id);
  const before = await work.manager.findOneBy(ProvenanceEventEntity, { id });
  if (!before) throw Refusal.notFound('provenance_event');
  const check = new Checklist(work);
  const text = (field: 'evidence' | 'note') =>
    input[field] === undefined ? before[field] : check.text(input[field], [field]);
  const { dateEdtf, fromParty, toParty, placeName } = input;
  const date = dateEdtf === undefined ? {} : checkEventDate(check, dateEdtf, work.now);
  const standing = input.standing ?? before.standing;
  const evidence = text('evidence');
  checkEvidence(check, standing, evidence);
  const note = text('note');
  const place = typeof placeName === 'string' ? check.words(placeName, ['placeName']) : placeName;
  const keepFrom = await chooseParty(work, check, fromParty, ['fromParty']);
  const keepTo = await chooseParty(work, check, toParty, ['toParty']);
  check.done();
  await changeRow(work, ProvenanceEventEntity, id, input.version, {
    kind: input.kind ?? before.kind,
    ...date,
    fromPartyId: fromParty === undefined ? before.fromPartyId : await keepFrom(),
    toPartyId: toParty === undefined ? before.toPartyId : await keepTo(),
    placeName: place === undefined ? before.placeName : place,
    standing,
    evidence,
    note,
  });
  return id;
}
