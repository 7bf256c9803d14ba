import { argumentProblem } from '../../api/kit/argumentProblem.js';
import { computedReads } from '../../api/kit/computedReads.js';
import { grouped, one } from '../../api/kit/relations.js';
import type { Relation, Row } from '../../api/kit/typeReads.js';
import { listParameter } from '../../db/dialect.js';
import { groupedBy } from '../../db/groupedBy.js';
import { billQuantities } from '../../domain/parts/billQuantities.js';
import { onItsWay } from '../../domain/parts/openOrder.js';
import { csvText } from '../export/csvText.js';
import { readOpenOrders, type OrderOnItsWay } from '../orders/openOrders.reads.js';
import { ordersByIds } from '../orders/partOrder.reads.js';
import { readStockOnHand } from '../substitution/stockOnHand.reads.js';
import { readBillGrounds } from './billNeeds.reads.js';
import { neutralCell } from './neutralCell.js';
import { orderCells, orderHeads } from './orderCells.js';

const mostSpares = 100;

const billOfMaterials: Relation = async (context, items, args) => {
  const spares = Number(args['spares'] ?? 0);
  if (spares < 0 || spares > mostSpares)
    throw argumentProblem(`Ask for 0 to ${mostSpares} spares.`);
  const { reader } = context.database;
  const ids = items.map(({ id }) => id);
  const withCapacitors = args['withCapacitors'] === true;
  const grounds = await readBillGrounds(reader, ids, withCapacitors, context.nowMs);
  const partTypeIds = [
    ...new Set([...grounds.values()].flat().flatMap(({ partTypeId }) => partTypeId ?? [])),
  ];
  const names = await reader.rows<{ id: string; name: string }>(
    `SELECT id AS "id", designation AS "name" FROM part_type WHERE ${reader.dialect.isAnyOf('id')}`,
    [listParameter(partTypeIds)],
  );
  const nameOf = new Map(names.map(({ id, name }) => [id, name]));
  const stock = await readStockOnHand(reader, partTypeIds);
  const orders = groupedBy(
    await readOpenOrders(reader, { itemIds: ids }),
    ({ itemId }) => itemId ?? '',
  );
  const asOf = new Date(context.nowMs).toISOString();
  const values = items.map((item): Row => {
    const own = grounds.get(item.id) ?? [];
    const known = own.filter(
      ({ partTypeId, description }) => partTypeId !== null || description !== null,
    );
    const byPart = groupedBy(
      known,
      ({ partTypeId, description }) => partTypeId ?? `words ${description ?? ''}`,
    );
    const lines = [...byPart].flatMap(([key, some]): Row[] => {
      const sum = (kind: string): number =>
        some
          .filter((ground) => ground.kind === kind)
          .reduce((total, { quantity }) => total + quantity, 0);
      const partTypeId = some[0]?.partTypeId ?? null;
      const inStock = partTypeId === null ? 0 : (stock.get(partTypeId) ?? 0);
      const need = { places: sum('PLACE'), tasks: sum('TASK'), wanted: sum('WANT') };
      const designators = [...new Set(some.flatMap(({ designator }) => designator ?? []))];
      const description = some[0]?.description ?? null;
      const coming = onItsWay({ partTypeId, description, designators }, orders.get(item.id) ?? []);
      const covered = inStock + sum('ASIDE') + coming.quantity;
      const { needed, toGet } = billQuantities(need, spares, covered);
      if (needed === 0) return [];
      return [
        {
          id: `${item.id} ${key}`,
          parentId: item.id,
          partTypeId,
          name: nameOf.get(partTypeId ?? '') ?? description ?? '',
          designators,
          needed,
          forTasks: need.tasks,
          spares,
          inStock,
          putAside: sum('ASIDE'),
          wanted: need.wanted,
          onOrder: coming.quantity,
          comingOrders: coming.orders,
          orderIds: coming.orders.map(({ id }) => id),
          toOrder: toGet,
        },
      ];
    });
    lines.sort((left, right) => (String(left['name']) < String(right['name']) ? -1 : 1));
    const unknown = own.flatMap(({ kind, partTypeId, designator }) =>
      kind === 'PLACE' && partTypeId === null && designator !== null ? [designator] : [],
    );
    return {
      id: item.id,
      unknown,
      billLines: lines,
      csv: csvOf(String(item['inventoryNumber']), lines),
      basis: {
        method:
          'By part type: places of the fit-out that are empty or wrongly filled' +
          (withCapacitors ? ', every capacitor of the fit-out' : '') +
          ', parts of open tasks, open wants. To order: needed and spares, less what is free on the shelf, put aside for its tasks, or ordered for it and on its way.',
        counted: [
          {
            what: 'places that lack a part',
            count: own.filter((one) => one.kind === 'PLACE').length,
          },
          { what: 'lines', count: lines.length },
        ],
        assumptions: [
          'A place, a task and a want for one part type are the same need: the largest number counts, not the sum.',
          'What is free on the shelf may be needed by another set too.',
        ],
        asOf,
      },
    };
  });
  return { values, children: values, childType: 'BillOfMaterials' };
};

const header = [
  'Item',
  'What',
  'Places',
  'Needed',
  'Spares',
  'In stock',
  'Put aside',
  'On the wanted list',
  'To order',
  ...orderHeads,
];

const csvOf = (inventoryNumber: string, lines: readonly Row[]): string =>
  csvText([
    header,
    ...lines.map((line) =>
      [
        inventoryNumber,
        String(line['name']),
        (line['designators'] as string[]).join(' '),
        ...['needed', 'spares', 'inStock', 'putAside', 'wanted', 'toOrder', 'onOrder'].map(
          (field) => String(line[field]),
        ),
        ...orderCells(line['comingOrders'] as OrderOnItsWay[]),
      ].map(neutralCell),
    ),
  ]);

export const billRelationsOfItem = { billOfMaterials };

export const billReads = computedReads('BillOfMaterials', {
  lines: (_context, bills) => {
    const children = bills.flatMap((bill) => bill['billLines'] as Row[]);
    return Promise.resolve({ values: grouped(bills, children), children, childType: 'BillLine' });
  },
});

export const billLineReads = computedReads('BillLine', {
  partType: one('PartType', 'partTypeId'),
  orders: ordersByIds,
});
