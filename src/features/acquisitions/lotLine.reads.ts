import { keyOf, type Order, type SortKey } from '../../api/kit/cursor.js';
import { pageOf } from '../../api/kit/page.js';
import { pageSize } from '../../api/kit/pageArgs.js';
import { one } from '../../api/kit/relations.js';
import type { Relation, Row, TypeReads } from '../../api/kit/typeReads.js';
import { listParameter } from '../../db/dialect.js';
import { groupedBy } from '../../db/groupedBy.js';
import { sumByCurrency } from '../../domain/money/sumByCurrency.js';
import { moneyAmount } from '../money/moneyAmount.js';
import { readItemLotShares, readLotLines, type LotLineWithShare } from './lotShares.reads.js';
import { readLots } from './lots.reads.js';
import { shownLotLine } from './shownLotLine.js';

export const lotLineReads: TypeReads = {
  typeName: 'LotLine',
  byIds: async (context, ids) => {
    const wanted = new Set(ids);
    const lines = await readLotLines(context.database.reader, 'line', ids);
    return lines.filter(({ id }) => wanted.has(id)).map((line) => shownLotLine(context, line));
  },
  relations: { item: one('Item', 'itemId'), acquisition: one('Acquisition', 'acquisitionId') },
};

const byOrdinal: Order = { name: 'LotLine ordinal ASC', kind: 'count' };

/** The whole lot is read, since each share hangs on all lines; a page of it is shown. */
export const linesOfLot: Relation = async (context, lots, args) => {
  const size = pageSize(args['first']);
  const after = typeof args['after'] === 'string' ? keyOf(args['after'], byOrdinal) : null;
  const ids = lots.map(({ id }) => id);
  const lines = await readLotLines(context.database.reader, 'lot', ids);
  const byLot = groupedBy(lines, (line) => line.acquisitionId);
  const pages = ids.map((id) => {
    const whole = byLot.get(id) ?? [];
    const later = after ? whole.filter((line) => isAfter(line, after)) : whole;
    const rest = later.slice(0, size + 1).map((line) => shownLotLine(context, line));
    const key = (line: Row): SortKey => [Number(line['ordinal']), line.id];
    return pageOf(rest, size, byOrdinal, key, after !== null, whole.length);
  });
  return { values: pages, children: pages.flatMap(({ nodes }) => nodes), childType: 'LotLine' };
};

const isAfter = (line: LotLineWithShare, [ordinal, id]: SortKey): boolean =>
  line.ordinal === ordinal ? line.id > id : line.ordinal > Number(ordinal);

/** Price and extra costs of whole lots, one amount a currency. */
export const totalsOfLot: Relation = async (context, parents) => {
  const ids = parents.map(({ id }) => id);
  const lots = await readLots(context.database.reader, 'lot', ids);
  const totals = new Map(
    lots.map((lot) => [lot.acquisitionId, sumByCurrency([lot.price, ...lot.extraCosts])]),
  );
  const values = ids.map((id) =>
    (totals.get(id) ?? []).map((total) => moneyAmount(total.minorUnits, total.currency)),
  );
  return { values, children: [], childType: null };
};

/** The line of a lot that an item came in on; null for one that came in no lot. */
const lineOfItem: Relation = async (context, items) => {
  const ids = items.map(({ id }) => id);
  const lines = await readItemLotShares(context.database.reader, ids);
  const byItem = new Map(lines.map((line) => [line.itemId, shownLotLine(context, line)]));
  const children = [...byItem.values()];
  return { values: ids.map((id) => byItem.get(id) ?? null), children, childType: 'LotLine' };
};

/** The lot that an item came in with. Two statements. */
const lotOfItem: Relation = async (context, items) => {
  const { reader } = context.database;
  const lines = await reader.rows<{ itemId: string; lotId: string }>(
    `SELECT item_id AS "itemId", acquisition_id AS "lotId" FROM lot_line
     WHERE ${reader.dialect.isAnyOf('item_id')}`,
    [listParameter(items.map(({ id }) => id))],
  );
  const lotIds = new Map(lines.map(({ itemId, lotId }) => [itemId, lotId]));
  const named = items.map(({ id }) => ({ id, lotId: lotIds.get(id) ?? null }));
  return one('Acquisition', 'lotId')(context, named, {}, new Set());
};

/** What its lot tells of an item. */
export const acquisitionRelationsOfItem: Record<string, Relation> = {
  acquisition: lotOfItem,
  lotLine: lineOfItem,
};
