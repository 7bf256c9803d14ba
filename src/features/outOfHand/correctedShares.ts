import { checkedRecordId } from '../../api/kit/checkedRecordId.js';
import { itemTypes } from '../../api/kit/globalId.js';
import type { Checklist } from '../../db/checklist.js';
import { queryInWork } from '../../db/queryInWork.js';
import type { UnitOfWork } from '../../db/unitOfWork.js';
import { apportion } from '../../domain/money/apportion.js';
import type { Money } from '../../domain/money/money.js';
import type { DisposalLineInput } from './disposal.inputs.js';
import { disposalShares } from './disposalShares.js';

export interface CorrectedShare {
  lineId: string;
  priceMinorUnits: number;
}

interface KeptLine {
  id: string;
  itemId: string;
  priceMinorUnits: number | string;
}

/** What falls to each line of a lot that went out, at a price that was corrected. */
export async function correctedShares(
  work: UnitOfWork,
  check: Checklist,
  disposalId: string,
  price: Money,
  inputs: readonly DisposalLineInput[] | null,
): Promise<CorrectedShare[]> {
  const kept = await queryInWork<KeptLine>(
    work,
    `SELECT id AS "id", item_id AS "itemId", price_minor_units AS "priceMinorUnits"
     FROM disposal_line WHERE disposal_id = ? ORDER BY ordinal`,
    [disposalId],
  );
  if (inputs === null) {
    const before = kept.map(({ priceMinorUnits }) => Number(priceMinorUnits));
    const weights = before.every((share) => share > 0) ? before : before.map(() => 1);
    const shares = apportion(price.minorUnits, weights);
    return kept.map(({ id }, index) => ({ lineId: id, priceMinorUnits: shares[index] ?? 0 }));
  }
  const ids = inputs.map(({ itemId }, index) =>
    checkedRecordId(check, itemTypes, itemId, ['lines', String(index), 'itemId']),
  );
  const lineOf = new Map(kept.map(({ id, itemId }) => [itemId, id]));
  const isSame =
    ids.length === kept.length &&
    new Set(ids).size === kept.length &&
    ids.every((id) => id !== null && lineOf.has(id));
  check.that(isSame, 'Name every item of the lot once, and no other.', ['lines']);
  const shares = disposalShares(check, inputs, price);
  return ids.flatMap((id, index) => {
    const lineId = lineOf.get(id ?? '');
    return lineId === undefined ? [] : [{ lineId, priceMinorUnits: shares[index] ?? 0 }];
  });
}
