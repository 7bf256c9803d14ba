import { checkedRecordId } from '../../api/kit/checkedRecordId.js';
import { itemTypes } from '../../api/kit/globalId.js';
import type { Checklist } from '../../db/checklist.js';
import { rowSourceInWork } from '../../db/rowSource.js';
import type { UnitOfWork } from '../../db/unitOfWork.js';
import { listParameter } from '../../db/dialect.js';
import { apportion } from '../../domain/money/apportion.js';
import type { Money } from '../../domain/money/money.js';
import type { DisposalLineInput } from './disposal.inputs.js';
import { readPrice } from './readPrice.js';
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
  const shares = sharesOf(check, inputs, price);
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

function sharesOf(
  check: Checklist,
  inputs: readonly DisposalLineInput[],
  price: Money,
): readonly number[] {
  const stated = inputs.filter((line) => line.price);
  if (stated.length === 0)
    return apportion(
      price.minorUnits,
      inputs.map(() => 1),
    );
  check.that(stated.length === inputs.length, 'Give a price for every line, or for none.', [
    'lines',
  ]);
  const prices = inputs.map((line, index) => {
    const path = ['lines', String(index), 'price'];
    const own = line.price ? readPrice(check, line.price, path) : null;
    check.that(
      own === null || own.currency === price.currency,
      `Give it in ${price.currency}.`,
      path,
    );
    return own?.minorUnits ?? 0;
  });
  const sum = prices.reduce((total, one) => total + one, 0);
  check.that(
    stated.length < inputs.length || sum === price.minorUnits,
    'The prices of the lines do not add up to the price of the lot.',
    ['lines'],
  );
  return prices;
}
