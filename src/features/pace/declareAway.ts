import { Checklist } from '../../db/checklist.js';
import { insertRow } from '../../db/insertRow.js';
import type { UnitOfWork } from '../../db/unitOfWork.js';
import { whoWorks } from '../work/whoWorks.js';
import { AwayEntity } from './away.entity.js';
import type { DeclareAwayInput } from './away.inputs.js';
import { checkAway } from './checkAway.js';

export async function declareAway(work: UnitOfWork, input: DeclareAwayInput): Promise<string> {
  const check = new Checklist(work);
  const person = await whoWorks(work, check, input.personId);
  const { fromOn, untilOn, isYearly } = input;
  checkAway(check, fromOn, untilOn);
  const note = check.text(input.note, ['note']);
  check.done();
  const away = await insertRow(work, AwayEntity, {
    personId: person?.id as string,
    fromOn,
    untilOn,
    isYearly,
    note,
    withdrawnAt: null,
  });
  return away.id;
}
