import { recordId } from '../../api/kit/globalId.js';
import { isGiven } from '../../api/kit/isGiven.js';
import { changeRow } from '../../db/changeRow.js';
import { Checklist } from '../../db/checklist.js';
import { oneAtATime } from '../../db/oneAtATime.js';
import { Refusal } from '../../db/refusal.js';
import type { UnitOfWork } from '../../db/unitOfWork.js';
import { refuseSubstitutionCircle } from './refuseSubstitutionCircle.js';
import { SubstitutionEntity } from './substitution.entity.js';
import type { ChangeSubstitutionInput } from './substitution.inputs.js';

export async function changeSubstitution(
  work: UnitOfWork,
  input: ChangeSubstitutionInput,
): Promise<string> {
  const id = recordId('Substitution', input.id);
  const { grade, isRetired } = input;
  await oneAtATime(work, 'substitutions');
  const before = await work.manager.findOneBy(SubstitutionEntity, { id });
  if (!before) throw Refusal.notFound('substitution');
  const check = new Checklist(work);
  const texts = {
    ...(input.consequence !== undefined && {
      consequence: check.text(input.consequence, ['consequence']),
    }),
    ...(input.recheck !== undefined && { recheck: check.text(input.recheck, ['recheck']) }),
    ...(input.source !== undefined && { source: check.text(input.source, ['source']) }),
  };
  check.done();
  const isMutual = input.isMutual ?? before.isMutual;
  const retiredAt = isGiven(isRetired) ? (isRetired ? work.now : null) : before.retiredAt;
  if (retiredAt === null) {
    const { originalId, substituteId } = before;
    await refuseSubstitutionCircle(work, { originalId, substituteId, isMutual }, id);
  }
  await changeRow(work, SubstitutionEntity, id, input.version, {
    ...(isGiven(grade) && { grade }),
    isMutual,
    ...texts,
    retiredAt,
  });
  return id;
}
