import { checkedRecordId } from '../../api/kit/checkedRecordId.js';
import { itemTypes } from '../../api/kit/globalId.js';
import type { Checklist } from '../../db/checklist.js';
import { shortText } from '../../db/shortText.js';
import type { UnitOfWork } from '../../db/unitOfWork.js';
import { itemFitOut, positionNamed } from '../inspections/itemFitOut.js';
import { checkQuantity } from '../stock/checkQuantity.js';
import { WantEntity } from '../wants/want.entity.js';
import type { OrderedLineInput } from './partOrder.inputs.js';

const mostPlaces = 200;

export interface OrderedLine {
  itemId: string | null;
  partTypeId: string | null;
  description: string | null;
  designators: string[];
  wantId: string | null;
  quantity: number;
}

/** A line as it is kept, completed from its want; what is wrong goes to the checklist. */
export async function checkOrderedLine(
  work: UnitOfWork,
  check: Checklist,
  line: OrderedLineInput,
  path: string[],
): Promise<OrderedLine> {
  const wantId = checkedRecordId(check, 'Want', line.wantId, [...path, 'wantId']);
  const want = wantId === null ? null : await work.manager.findOneBy(WantEntity, { id: wantId });
  await check.exists('want', wantId, [...path, 'wantId']);
  const givenType = checkedRecordId(check, 'PartType', line.partTypeId, [...path, 'partTypeId']);
  await check.exists('part_type', givenType, [...path, 'partTypeId']);
  const givenItem = checkedRecordId(check, itemTypes, line.itemId, [...path, 'itemId']);
  await check.exists('item', givenItem, [...path, 'itemId']);
  const words = shortText(check, line.description, [...path, 'description']);
  const itemId = givenItem ?? want?.itemId ?? null;
  const partTypeId = givenType ?? (words === null ? (want?.partTypeId ?? null) : null);
  const description = words ?? (partTypeId === null ? (want?.description ?? null) : null);
  check.that(
    typeof line.partTypeId === 'string' || partTypeId !== null || description !== null,
    'Say what was ordered: give a part type, words, or the want that it answers.',
    [...path, 'description'],
  );
  checkQuantity(check, line.quantity, [...path, 'quantity']);
  const designators = await placesOf(work, check, { itemId, line, path });
  return { itemId, partTypeId, description, designators, wantId, quantity: line.quantity };
}

async function placesOf(
  work: UnitOfWork,
  check: Checklist,
  of: { itemId: string | null; line: OrderedLineInput; path: string[] },
): Promise<string[]> {
  const { itemId, line } = of;
  const path = [...of.path, 'designators'];
  const { length } = line.designators;
  if (length === 0) return [];
  check.that(length <= mostPlaces, `Name at most ${mostPlaces} places; these are ${length}.`, path);
  check.that(itemId !== null, 'Say of which set: give the item too.', path);
  const fitOut = itemId === null ? null : await itemFitOut(work, itemId);
  const places = line.designators.map((named, index) => {
    const words = check.words(named, [...path, String(index)], 60);
    return positionNamed(fitOut?.positions ?? [], words)?.designator ?? words;
  });
  return [...new Set(places)];
}
