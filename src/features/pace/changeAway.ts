import { recordId } from '../../api/kit/globalId.js';
import { isGiven } from '../../api/kit/isGiven.js';
import { changeRow } from '../../db/changeRow.js';
import { Checklist } from '../../db/checklist.js';
import { Refusal } from '../../db/refusal.js';
import type { UnitOfWork } from '../../db/unitOfWork.js';
import { AwayEntity } from './away.entity.js';
import type { ChangeAwayInput } from './away.inputs.js';
import { checkAway } from './checkAway.js';

export async function changeAway(work: UnitOfWork, input: ChangeAwayInput): Promise<string> {
  const id = recordId('Away', input.id);
  const away = await work.manager.findOneBy(AwayEntity, { id });
  if (!away) throw Refusal.notFound('away');
  const check = new Checklist(work);
  const fromOn = input.fromOn ?? away.fromOn;
  const untilOn = input.untilOn ?? away.untilOn;
  checkAway(check, fromOn, untilOn);
  const note = input.note === undefined ? undefined : check.text(input.note, ['note']);
  check.done();
  await changeRow(work, AwayEntity, id, input.version, {
    fromOn,
    untilOn,
    ...(isGiven(input.isYearly) && { isYearly: input.isYearly }),
    ...(note !== undefined && { note }),
    ...(isGiven(input.isWithdrawn) && { withdrawnAt: input.isWithdrawn ? work.now : null }),
  });
  return id;
}
