import { itemTypes, recordId } from '../../api/kit/globalId.js';
import { changeRow, type RowChanges } from '../../db/changeRow.js';
import { Checklist } from '../../db/checklist.js';
import { insertRow } from '../../db/insertRow.js';
import { oneAtATime } from '../../db/oneAtATime.js';
import { Refusal } from '../../db/refusal.js';
import type { UnitOfWork } from '../../db/unitOfWork.js';
import { readSpent } from '../money/readSpent.js';
import { isPercent } from './isPercent.js';
import { ItemOutlookEntity } from './itemOutlook.entity.js';
import type { SetItemOutlookInput } from './worth.inputs.js';

export async function setItemOutlook(
  work: UnitOfWork,
  input: SetItemOutlookInput,
): Promise<string> {
  const itemId = recordId(itemTypes, input.itemId, ['itemId']);
  const check = new Checklist(work);
  await check.exists('item', itemId, ['itemId']);
  const { presentStandard, successPercent, premium, premiumReason } = input;
  check.that(
    successPercent === undefined || successPercent === null || isPercent(successPercent),
    'Give the chance as a whole number from 0 to 100.',
    ['successPercent'],
  );
  const money = premium ? readSpent(check, premium, ['premium'], 'A premium is 0 or more.') : null;
  const said: RowChanges<ItemOutlookEntity> = {
    ...(presentStandard !== undefined && { presentStandard }),
    ...(successPercent !== undefined && { successPercent }),
    ...(premium !== undefined && {
      premiumMinorUnits: money?.minorUnits ?? null,
      premiumCurrency: money?.currency ?? null,
    }),
    ...(premiumReason !== undefined && {
      premiumReason: check.text(premiumReason, ['premiumReason']),
    }),
  };
  check.done();
  await oneAtATime(work, `outlook of ${itemId}`);
  const known = await work.manager.findOneBy(ItemOutlookEntity, { itemId });
  if (known) return (await changeRow(work, ItemOutlookEntity, known.id, input.version, said)).id;
  if (input.version !== 0) throw Refusal.stale(0, input.version);
  const nothing = {
    presentStandard: null,
    successPercent: null,
    premiumMinorUnits: null,
    premiumCurrency: null,
    premiumReason: null,
  };
  return (await insertRow(work, ItemOutlookEntity, { itemId, ...nothing, ...said })).id;
}
