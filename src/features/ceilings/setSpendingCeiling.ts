import { changeRow } from '../../db/changeRow.js';
import { Checklist } from '../../db/checklist.js';
import { insertRow } from '../../db/insertRow.js';
import { oneAtATime } from '../../db/oneAtATime.js';
import { Refusal } from '../../db/refusal.js';
import type { UnitOfWork } from '../../db/unitOfWork.js';
import { readSpent } from '../money/readSpent.js';
import type { SetSpendingCeilingInput } from './ceilings.type.js';
import { SpendingCeilingEntity } from './spendingCeiling.entity.js';

export async function setSpendingCeiling(
  work: UnitOfWork,
  { period, version, amount }: SetSpendingCeilingInput,
): Promise<string> {
  const check = new Checklist(work);
  const money = amount
    ? readSpent(check, amount, ['amount'], 'A ceiling cannot be below zero.')
    : null;
  check.done();
  await oneAtATime(work, 'spending ceilings');
  const known = await work.manager.findOneBy(SpendingCeilingEntity, { period });
  const said = {
    amountMinorUnits: money?.minorUnits ?? null,
    ...(money && { currency: money.currency }),
  };
  if (known) return (await changeRow(work, SpendingCeilingEntity, known.id, version, said)).id;
  if (version !== 0) throw Refusal.stale(0, version);
  if (!money) throw Refusal.invalid('Give the most that may be spent.', ['amount']);
  const row = { period, amountMinorUnits: money.minorUnits, currency: money.currency };
  return (await insertRow(work, SpendingCeilingEntity, row)).id;
}
