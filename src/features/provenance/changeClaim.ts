import { recordId } from '../../api/kit/globalId.js';
import { changeRow } from '../../db/changeRow.js';
import { Checklist } from '../../db/checklist.js';
import type { UnitOfWork } from '../../db/unitOfWork.js';
import { checkPastDay } from '../money/checkPastDay.js';
import { chooseParty } from '../parties/chooseParty.js';
import { ClaimEntity } from './claim.entity.js';
import type { ChangeClaimInput } from './claim.inputs.js';
import { longestStatement } from './recordClaim.js';

/** Corrects how a claim was written down: what was said, by whom, when. */
export async function changeClaim(work: UnitOfWork, input: ChangeClaimInput): Promise<string> {
  const id = recordId('Claim', input.id);
  const check = new Checklist(work);
  const { saidOn, saidBy } = input;
  const statement =
    typeof input.statement === 'string'
      ? check.words(input.statement, ['statement'], longestStatement)
      : undefined;
  if (saidOn) checkPastDay(check, saidOn, work.now, ['saidOn']);
  const keepSaidBy = await chooseParty(work, check, saidBy, ['saidBy']);
  check.done();
  const saidById = saidBy === undefined ? undefined : await keepSaidBy();
  await changeRow(work, ClaimEntity, id, input.version, {
    ...(statement !== undefined && { statement }),
    ...(saidOn !== undefined && { saidOn }),
    ...(saidById !== undefined && { saidById }),
  });
  return id;
}
