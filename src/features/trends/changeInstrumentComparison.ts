import { recordId } from '../../api/kit/globalId.js';
import { isGiven } from '../../api/kit/isGiven.js';
import { changeRow } from '../../db/changeRow.js';
import { Checklist } from '../../db/checklist.js';
import type { UnitOfWork } from '../../db/unitOfWork.js';
import { checkPastDay } from '../money/checkPastDay.js';
import { checkFactor } from './checkFactor.js';
import { InstrumentComparisonEntity } from './instrumentComparison.entity.js';
import type { ChangeInstrumentComparisonInput } from './instrumentComparison.inputs.js';

export async function changeInstrumentComparison(
  work: UnitOfWork,
  input: ChangeInstrumentComparisonInput,
): Promise<string> {
  const id = recordId('InstrumentComparison', input.id);
  const check = new Checklist(work);
  const { factor, comparedOn } = input;
  if (isGiven(factor)) checkFactor(check, factor, ['factor']);
  if (isGiven(comparedOn)) checkPastDay(check, comparedOn, work.now, ['comparedOn']);
  const note = input.note === undefined ? undefined : check.text(input.note, ['note']);
  check.done();
  await changeRow(work, InstrumentComparisonEntity, id, input.version, {
    ...(isGiven(factor) && { factor }),
    ...(isGiven(comparedOn) && { comparedOn }),
    ...(note !== undefined && { note }),
  });
  return id;
}
