import { childPages } from '../../api/kit/childPages.js';
import { selectColumns } from '../../api/kit/selectColumns.js';
import { tableReads } from '../../api/kit/tableReads.js';
import type { Relation, Row } from '../../api/kit/typeReads.js';
import { listParameter } from '../../db/dialect.js';
import { one } from '../../api/kit/relations.js';
import { reckonItems } from './worthOfItems.js';
import { shownWorth } from './shownWorth.js';

const noteColumns = selectColumns('value_note', [
  'id',
  'version',
  'modelId',
  'itemId',
  'basis',
  'standard',
  'valuedOn',
  'lowMinorUnits',
  'likelyMinorUnits',
  'highMinorUnits',
  'currency',
  'source',
  'note',
  'struckAt',
]);
const outlookColumns = selectColumns('item_outlook', [
  'id',
  'version',
  'itemId',
  'presentStandard',
  'successPercent',
  'premiumMinorUnits',
  'premiumCurrency',
  'premiumReason',
]);

export const valueNoteReads = tableReads('ValueNote', 'value_note', noteColumns, {
  model: one('Model', 'modelId'),
  item: one('Item', 'itemId'),
});
export const itemOutlookReads = tableReads('ItemOutlook', 'item_outlook', outlookColumns, {
  item: one('Item', 'itemId'),
});
export const worthTermsReads = tableReads(
  'WorthTerms',
  'worth_terms',
  selectColumns('worth_terms', [
    'id',
    'version',
    'hourRateMinorUnits',
    'hourRateCurrency',
    'saleCostPercent',
    'partEffortMinutes',
    'usablePartsPercent',
    'spareUsePercent',
  ]),
);

const notesOf = (parentColumn: string): Relation =>
  childPages('ValueNote', {
    table: 'value_note',
    columns: noteColumns,
    parentColumn,
    sortColumn: 'valued_on',
    sortName: 'valuedOn',
    direction: 'DESC',
  });

const outlook: Relation = async ({ database: { reader } }, items) => {
  const children = await reader.rows<Row>(
    `SELECT ${outlookColumns} FROM item_outlook WHERE ${reader.dialect.isAnyOf('item_id')}`,
    [listParameter(items.map(({ id }) => id))],
  );
  const byItem = new Map(children.map((row) => [row['itemId'], row]));
  const values = items.map(({ id }) => byItem.get(id) ?? null);
  return { values, children, childType: 'ItemOutlook' };
};

const worth: Relation = async (context, items) => {
  const reckoned = await reckonItems(
    context,
    items.map(({ id }) => id),
  );
  const values = items.map(({ id }) => {
    const own = reckoned.get(id);
    return own ? shownWorth(own, context.nowMs) : null;
  });
  return { values, children: [], childType: null };
};

export const worthRelationsOfModel = { valueNotes: notesOf('model_id') };

/** What value notes add to an item. */
export const worthRelationsOfItem: Record<string, Relation> = {
  valueNotes: notesOf('item_id'),
  outlook,
  worth,
};
