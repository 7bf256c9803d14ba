import { childPages } from '../../api/kit/childPages.js';
import { one } from '../../api/kit/relations.js';
import { selectColumns } from '../../api/kit/selectColumns.js';
import { tableReads } from '../../api/kit/tableReads.js';
import type { Relation } from '../../api/kit/typeReads.js';
import { readNotedPrices } from './notedPrices.reads.js';
import { shownPrices } from './shownPrices.js';

const columns = selectColumns('price_note', [
  'id',
  'version',
  'partTypeId',
  'modelId',
  'kind',
  'notedOn',
  'amountMinorUnits',
  'currency',
  'quantity',
  'seenAt',
  'note',
  'struckAt',
]);

export const priceNoteReads = tableReads('PriceNote', 'price_note', columns, {
  partType: one('PartType', 'partTypeId'),
  model: one('Model', 'modelId'),
});

const pricesOf = (owner: 'part_type_id' | 'model_id'): Record<string, Relation> => ({
  priceNotes: childPages('PriceNote', {
    table: 'price_note',
    columns,
    parentColumn: owner,
    sortColumn: 'noted_on',
    sortName: 'notedOn',
    direction: 'DESC',
  }),
  prices: async ({ database, nowMs }, parents) => {
    const ids = parents.map(({ id }) => id);
    const notes = await readNotedPrices(database.reader, owner, ids);
    const values = ids.map((id) => shownPrices(notes.get(id) ?? [], nowMs));
    return { values, children: [], childType: null };
  },
});

export const priceRelationsOfPartType = pricesOf('part_type_id');
export const priceRelationsOfModel = pricesOf('model_id');
