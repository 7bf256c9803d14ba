import { recordId } from '../../api/kit/globalId.js';
import { isGiven } from '../../api/kit/isGiven.js';
import { changeRow } from '../../db/changeRow.js';
import { Checklist } from '../../db/checklist.js';
import { oneAtATime } from '../../db/oneAtATime.js';
import type { UnitOfWork } from '../../db/unitOfWork.js';
import { readSpent } from '../money/readSpent.js';
import { checkQuantity } from '../stock/checkQuantity.js';
import { keepSubstitutes, readSubstitutes } from './readSubstitutes.js';
import { WantEntity } from './want.entity.js';
import type { ChangeWantInput } from './want.inputs.js';
import { whyCeiling } from './whyCeiling.js';

export async function changeWant(work: UnitOfWork, input: ChangeWantInput): Promise<string> {
  const id = recordId('Want', input.id);
  await oneAtATime(work, `want ${id}`);
  const check = new Checklist(work);
  const { quantity, substituteIds, isDropped } = input;
  if (isGiven(quantity)) checkQuantity(check, quantity, ['quantity']);
  const ceiling = input.ceiling ? readSpent(check, input.ceiling, ['ceiling'], whyCeiling) : null;
  const wanted = isGiven(substituteIds) ? await readSubstitutes(check, substituteIds) : null;
  const note = input.note === undefined ? undefined : check.text(input.note, ['note']);
  check.done();
  await changeRow(work, WantEntity, id, input.version, {
    ...(isGiven(quantity) && { quantity }),
    ...(input.ceiling !== undefined && {
      ceilingMinorUnits: ceiling?.minorUnits ?? null,
      ceilingCurrency: ceiling?.currency ?? null,
    }),
    ...(isGiven(isDropped) && { droppedAt: isDropped ? work.now : null }),
    ...(note !== undefined && { note }),
  });
  if (wanted !== null) await keepSubstitutes(work, id, wanted);
  return id;
}
