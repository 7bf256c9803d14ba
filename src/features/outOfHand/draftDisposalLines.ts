import { checkedRecordId } from '../../api/kit/checkedRecordId.js';
import { itemTypes } from '../../api/kit/globalId.js';
import type { Checklist } from '../../db/checklist.js';
import { rowSourceInWork } from '../../db/rowSource.js';
import type { UnitOfWork } from '../../db/unitOfWork.js';
import { listParameter } from '../../db/dialect.js';
import type { Money } from '../../domain/money/money.js';
import type { DisposalLineInput } from './disposal.inputs.js';
import { disposalShares } from './disposalShares.js';
import { refuseIfOutOfHand } from './refuseIfOutOfHand.js';

const mostLines = 500;

export interface DisposalLineDraft {
  itemId: string;
  typeName: 'Rig' | 'Accessory';
  version: number;
  priceMinorUnits: number;
}

interface KnownItem {
  id: string;
  kind: 'RIG' | 'ACCESSORY';
  version: number;
  inventoryNumber: string;
  retiredAt: string | null;
}

/** The items of a lot that goes out, each at hand and named once, with what falls to each. */
export async function draftDisposalLines(
  work: UnitOfWork,
  check: Checklist,
  inputs: readonly DisposalLineInput[],
  price: Money,
): Promise<DisposalLineDraft[]> {
  check.that(inputs.length > 0, 'Name at least one item that goes.', ['lines']);
  check.that(inputs.length <= mostLines, `${mostLines} is the most at once.`, ['lines']);
  check.done();
  const ids = inputs.map(({ itemId }, index) =>
    checkedRecordId(check, itemTypes, itemId, ['lines', String(index), 'itemId']),
  );
  const source = rowSourceInWork(work);
  const known = await source.rows<KnownItem>(
    `SELECT id AS "id", kind AS "kind", version AS "version",
       inventory_number AS "inventoryNumber", retired_at AS "retiredAt"
     FROM item WHERE ${source.dialect.isAnyOf('id')}`,
    [listParameter(ids.flatMap((id) => id ?? []))],
  );
  const byId = new Map(known.map((item) => [item.id, item]));
  const shares = disposalShares(check, inputs, price);
  const drafts: DisposalLineDraft[] = [];
  for (const [index, id] of ids.entries()) {
    if (id === null) continue;
    const path = ['lines', String(index), 'itemId'];
    const item = byId.get(id);
    if (!item) {
      check.add({ code: 'NOT_FOUND', message: 'There is no item with this id.', path });
      continue;
    }
    check.that(ids.indexOf(id) === index, 'It is named twice.', path);
    check.that(item.retiredAt === null, `${item.inventoryNumber} has left already.`, path);
    await refuseIfOutOfHand(work, check, id, path);
    drafts.push({
      itemId: id,
      typeName: item.kind === 'RIG' ? 'Rig' : 'Accessory',
      version: item.version,
      priceMinorUnits: shares[index] ?? 0,
    });
  }
  return drafts;
}
