import { isGiven } from '../../api/kit/isGiven.js';
import { changeRow, type RowChanges } from '../../db/changeRow.js';
import { Checklist } from '../../db/checklist.js';
import { insertRow } from '../../db/insertRow.js';
import { oneAtATime } from '../../db/oneAtATime.js';
import { Refusal } from '../../db/refusal.js';
import type { UnitOfWork } from '../../db/unitOfWork.js';
import { readSpent } from '../money/readSpent.js';
import { isPercent } from './isPercent.js';
import { usualTerms } from './usualTerms.js';
import type { SetWorthTermsInput } from './worth.inputs.js';
import { WorthTermsEntity } from './worthTerms.entity.js';

const minutesOfADay = 1440;

export async function setWorthTerms(work: UnitOfWork, input: SetWorthTermsInput): Promise<string> {
  const check = new Checklist(work);
  const { hourRate, partEffortMinutes } = input;
  const said: RowChanges<WorthTermsEntity> = {};
  for (const name of ['saleCostPercent', 'usablePartsPercent', 'spareUsePercent'] as const) {
    const percent = input[name];
    if (!isGiven(percent)) continue;
    check.that(isPercent(percent), 'Give a whole number from 0 to 100.', [name]);
    said[name] = percent;
  }
  if (isGiven(partEffortMinutes)) {
    const isUsable = partEffortMinutes >= 0 && partEffortMinutes <= minutesOfADay;
    check.that(isUsable, 'Give minutes from 0 to 1440.', ['partEffortMinutes']);
    said.partEffortMinutes = partEffortMinutes;
  }
  if (hourRate !== undefined) {
    const rate =
      hourRate === null
        ? null
        : readSpent(check, hourRate, ['hourRate'], 'A rate for own time is 0 or more.');
    said.hourRateMinorUnits = rate?.minorUnits ?? null;
    said.hourRateCurrency = rate?.currency ?? null;
  }
  check.done();
  await oneAtATime(work, 'terms of worth');
  const [known] = await work.manager.find(WorthTermsEntity, { take: 1 });
  if (known) return (await changeRow(work, WorthTermsEntity, known.id, input.version, said)).id;
  if (input.version !== 0) throw Refusal.stale(0, input.version);
  return (await insertRow(work, WorthTermsEntity, { ...usualTerms, ...said })).id;
}
