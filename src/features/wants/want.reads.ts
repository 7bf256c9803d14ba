import { grouped, one } from '../../api/kit/relations.js';
import { selectColumns } from '../../api/kit/selectColumns.js';
import { tableReads } from '../../api/kit/tableReads.js';
import type { Relation, Row, TypeReads } from '../../api/kit/typeReads.js';
import { listParameter } from '../../db/dialect.js';
import { moneyAmount } from '../money/moneyAmount.js';
import { ordersByIds } from '../orders/partOrder.reads.js';
import { readStandIns, readWantPrices } from './insteadOf.reads.js';
import { readWants, type StandingWant } from './openWants.reads.js';
import { readWantedSheet } from './wantedSheet.reads.js';

/** A want as the API shows it. */
function shownWant(want: StandingWant, nowMs: number): Row {
  const { urgency, openTasksWaiting, foundQuantity, openQuantity, orders, ...others } = want;
  const { onOrderQuantity, ...kept } = others;
  const { ceilingMinorUnits, ceilingCurrency } = kept;
  return {
    ...kept,
    orderIds: orders.map(({ id }) => id),
    ceiling:
      ceilingMinorUnits === null || ceilingCurrency === null
        ? null
        : moneyAmount(Number(ceilingMinorUnits), ceilingCurrency),
    standing: {
      urgency,
      openTasksWaiting,
      foundQuantity,
      openQuantity,
      onOrderQuantity,
      basis: {
        method:
          'Work stops when the task it is for is open; a set stops when its required position is not known to be filled. Found is what was bought for it; on its way what was ordered for it, or for its part or place of the set.',
        counted: [
          { what: 'open tasks that wait', count: openTasksWaiting },
          { what: 'units found', count: foundQuantity },
          { what: 'units on their way', count: onOrderQuantity },
        ],
        assumptions: [],
        asOf: new Date(nowMs).toISOString(),
      },
    },
  };
}

const substitutes: Relation = async (context, wants) => {
  const { reader } = context.database;
  const pairs = await reader.rows<Row & { parentId: string; partTypeId: string }>(
    `SELECT id AS "id", want_id AS "parentId", part_type_id AS "partTypeId"
     FROM want_substitute WHERE ${reader.dialect.isAnyOf('want_id')} ORDER BY id`,
    [listParameter(wants.map(({ id }) => id))],
  );
  const ids = [...new Set(pairs.map(({ partTypeId }) => partTypeId))];
  const children = (await context.reads.get('PartType')?.byIds(context, ids)) ?? [];
  const byId = new Map(children.map((row) => [row.id, row]));
  const values = grouped(wants, pairs).map((some) =>
    some.flatMap((pair) => byId.get(pair['partTypeId'] as string) ?? []),
  );
  return { values, children, childType: 'PartType' };
};

export const wantReads: TypeReads = {
  typeName: 'Want',
  byIds: async ({ database, nowMs }, ids) =>
    (await readWants(database.reader, ids, nowMs)).map((want) => shownWant(want, nowMs)),
  relations: {
    partType: one('PartType', 'partTypeId'),
    item: one('Item', 'itemId'),
    task: one('Task', 'taskId'),
    substitutes,
    orders: ordersByIds,
    standIns: async (context, wants) => {
      const values = await readStandIns(context, wants);
      return { values, children: values.flat(), childType: 'Substitute' };
    },
    prices: async (context, wants) => {
      const values = await readWantPrices(context, wants);
      return { values, children: [], childType: null };
    },
  },
};

/** Computed, and never asked for by an id of its own. */
export const wantedListReads: TypeReads = {
  typeName: 'WantedList',
  byIds: () => Promise.resolve([]),
  relations: {
    html: async (context, lists) => {
      const values = await Promise.all(
        lists.map((list) => readWantedSheet(context, list['open'] as StandingWant[])),
      );
      return { values, children: [], childType: null };
    },
    wants: ({ nowMs }, lists) => {
      const values = lists.map((list) =>
        (list['open'] as StandingWant[]).map((want) => shownWant(want, nowMs)),
      );
      return Promise.resolve({ values, children: values.flat(), childType: 'Want' });
    },
  },
};

export const findReads = tableReads(
  'Find',
  'find',
  selectColumns('find', ['id', 'key', 'wantId', 'acquisitionId', 'stockLotId', 'recordedAt']),
  {
    want: one('Want', 'wantId'),
    acquisition: one('Acquisition', 'acquisitionId'),
    stockLot: one('StockLot', 'stockLotId'),
  },
);
