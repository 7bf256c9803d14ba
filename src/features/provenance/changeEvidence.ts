import { recordId } from '../../api/kit/globalId.js';
import { isGiven } from '../../api/kit/isGiven.js';
import { changeRow } from '../../db/changeRow.js';
import { Checklist } from '../../db/checklist.js';
import type { UnitOfWork } from '../../db/unitOfWork.js';
import { EvidenceEntity } from './evidence.entity.js';
import type { ChangeEvidenceInput } from './evidence.inputs.js';
import { longestStatement } from './recordClaim.js';

/** Corrects a piece of evidence, or says why it counts no more. */
export async function changeEvidence(
  work: UnitOfWork,
  input: ChangeEvidenceInput,
): Promise<string> {
  const id = recordId('Evidence', input.id);
  const check = new Checklist(work);
  const { bearing, kind, strength, description, keptAt, withdrawnReason } = input;
  const reason = check.text(withdrawnReason, ['withdrawnReason']);
  const changes = {
    ...(isGiven(bearing) && { bearing }),
    ...(isGiven(kind) && { kind }),
    ...(isGiven(strength) && { strength }),
    ...(isGiven(description) && {
      description: check.words(description, ['description'], longestStatement),
    }),
    ...(keptAt !== undefined && { keptAt: check.text(keptAt, ['keptAt']) }),
    ...(withdrawnReason !== undefined && {
      withdrawnReason: reason,
      withdrawnAt: reason === null ? null : work.now,
    }),
  };
  check.done();
  await changeRow(work, EvidenceEntity, id, input.version, changes);
  return id;
}
