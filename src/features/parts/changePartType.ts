import { recordId } from '../../api/kit/globalId.js';
import { isGiven } from '../../api/kit/isGiven.js';
import { changeRow } from '../../db/changeRow.js';
import { Checklist } from '../../db/checklist.js';
import { Refusal } from '../../db/refusal.js';
import type { UnitOfWork } from '../../db/unitOfWork.js';
import { checkRatings } from './checkRatings.js';
import { checkTubeFit } from './checkTubeFit.js';
import { PartTypeEntity } from './partType.entity.js';
import type { ChangePartTypeInput } from './partType.inputs.js';
import { refuseTakenDesignation } from './refuseTakenDesignation.js';

export async function changePartType(
  work: UnitOfWork,
  input: ChangePartTypeInput,
): Promise<string> {
  const id = recordId('PartType', input.id);
  const before = await work.manager.findOneBy(PartTypeEntity, { id });
  if (!before) throw Refusal.notFound('part type');
  const check = new Checklist(work);
  const { description, ratings, isRetired } = input;
  const kind = input.kind ?? before.kind;
  const designation = isGiven(input.designation)
    ? check.words(input.designation, ['designation'])
    : before.designation;
  await refuseTakenDesignation(work, check, { kind, designation, exceptId: id });
  const changes = {
    kind,
    designation,
    ...(description !== undefined && { description: check.text(description, ['description']) }),
    ...(isGiven(ratings) && { ratings: checkRatings(check, ratings) }),
    ...(input.tube !== undefined && checkTubeFit(check, kind, input.tube)),
    ...(isGiven(isRetired) && { retiredAt: isRetired ? work.now : null }),
  };
  check.done();
  await changeRow(work, PartTypeEntity, id, input.version, changes);
  return id;
}
