import { checkedRecordId } from '../../api/kit/checkedRecordId.js';
import { Checklist } from '../../db/checklist.js';
import { insertRow } from '../../db/insertRow.js';
import type { UnitOfWork } from '../../db/unitOfWork.js';
import { EvidenceEntity } from './evidence.entity.js';
import type { RecordEvidenceInput } from './evidence.inputs.js';
import { longestStatement } from './recordClaim.js';

/** A piece of evidence bears on an event or a claim. */
export async function recordEvidence(
  work: UnitOfWork,
  input: RecordEvidenceInput,
): Promise<string> {
  const check = new Checklist(work);
  const eventId = checkedRecordId(check, 'ProvenanceEvent', input.eventId, ['eventId']);
  const claimId = checkedRecordId(check, 'Claim', input.claimId, ['claimId']);
  check.that(
    (typeof input.eventId === 'string') !== (typeof input.claimId === 'string'),
    'Say what it bears on: an event or a claim, one of the two.',
    ['eventId'],
  );
  await check.exists('provenance_event', eventId, ['eventId']);
  await check.exists('claim', claimId, ['claimId']);
  const description = check.words(input.description, ['description'], longestStatement);
  const keptAt = check.text(input.keptAt, ['keptAt']);
  check.done();
  const { bearing, kind, strength } = input;
  const evidence = await insertRow(work, EvidenceEntity, {
    eventId,
    claimId,
    bearing,
    kind,
    strength,
    description,
    keptAt,
    withdrawnAt: null,
    withdrawnReason: null,
  });
  return evidence.id;
}
