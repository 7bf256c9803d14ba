import { recordId } from '../../api/kit/globalId.js';
import { isGiven } from '../../api/kit/isGiven.js';
import { changeRow } from '../../db/changeRow.js';
import { Checklist } from '../../db/checklist.js';
import type { UnitOfWork } from '../../db/unitOfWork.js';
import { readSpent } from '../money/readSpent.js';
import { InquiryEntity } from './inquiry.entity.js';
import type { ChangeInquiryInput } from './inquiry.inputs.js';
import { areMinutes, whyNoCost, whyNoMinutes } from './planInquiry.js';

export async function changeInquiry(work: UnitOfWork, input: ChangeInquiryInput): Promise<string> {
  const id = recordId('Inquiry', input.id);
  const { description, minutes, isDone, outcome, isStruck } = input;
  const check = new Checklist(work);
  const cost = input.cost ? readSpent(check, input.cost, ['cost'], whyNoCost) : null;
  if (isGiven(minutes)) check.that(areMinutes(minutes), whyNoMinutes, ['minutes']);
  const changes = {
    ...(isGiven(description) && { description: check.words(description, ['description']) }),
    ...(cost && { costMinorUnits: cost.minorUnits, costCurrency: cost.currency }),
    ...(isGiven(minutes) && { minutes }),
    ...(isGiven(isDone) && { doneAt: isDone ? work.now : null }),
    ...(isGiven(isStruck) && { struckAt: isStruck ? work.now : null }),
    ...(outcome !== undefined && { outcome: check.text(outcome, ['outcome']) }),
  };
  check.done();
  await changeRow(work, InquiryEntity, id, input.version, changes);
  return id;
}
