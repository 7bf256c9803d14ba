import { argumentProblem } from '../../api/kit/argumentProblem.js';
import type { Relation, Row } from '../../api/kit/typeReads.js';
import { replacementOrder } from '../../domain/parts/replacementOrder.js';
import { onItsWay } from '../../domain/parts/openOrder.js';
import { groupedBy } from '../../db/groupedBy.js';
import { csvText } from '../export/csvText.js';
import { orderInWords } from '../orders/orderInWords.js';
import { readOpenOrders, type OrderOnItsWay } from '../orders/openOrders.reads.js';
import { preferredSeries } from '../reference/valueTables.js';
import type { PreferredSeries } from '../reference/valueCodes.type.js';
import { readCapacitorPlaces, type CapacitorPlaces } from './capacitorPlaces.reads.js';
import { neutralCell } from './neutralCell.js';
import { orderCells, orderHeads } from './orderCells.js';
import type { ReplacementLine, ReplacementList } from './replacementList.type.js';

const mostSpares = 100;
/** Customary for the paper and electrolytic capacitors that are replaced. Common practice, no source. */
const alternativesWithinPercent = 20;

const replacementList: Relation = async (context, items, args) => {
  const spares = Number(args['spares'] ?? 0);
  if (spares < 0 || spares > mostSpares)
    throw argumentProblem(`Ask for 0 to ${mostSpares} spares.`);
  const series = (args['series'] ?? 'E6') as PreferredSeries;
  const ids = items.map(({ id }) => id);
  const { reader } = context.database;
  const places = await readCapacitorPlaces(reader, ids);
  const orders = groupedBy(
    await readOpenOrders(reader, { itemIds: ids }),
    ({ itemId }) => itemId ?? '',
  );
  const values = items.map((item) => {
    const own = places.get(item.id) ?? { known: [], unknown: [] };
    return listOf(
      item,
      { ...own, orders: orders.get(item.id) ?? [] },
      series,
      spares,
      context.nowMs,
    );
  });
  return { values, children: [], childType: null };
};

function listOf(
  item: Row,
  { known, unknown, orders }: CapacitorPlaces & { orders: OrderOnItsWay[] },
  series: PreferredSeries,
  spares: number,
  nowMs: number,
): ReplacementList {
  const oneDecade = preferredSeries.get(series)?.values ?? [];
  const order = replacementOrder(known, oneDecade, spares, alternativesWithinPercent);
  const coming = order.map(({ designators }) => {
    const asked = { partTypeId: null, description: null, designators };
    return onItsWay(
      asked,
      orders.filter((one) => one.designators.length > 0),
    );
  });
  const lines = order.map((line, index) => {
    const onOrder = coming[index]?.quantity ?? 0;
    return {
      ...line,
      designators: [...line.designators],
      originals: [...line.originals],
      alternatives: [...line.alternatives],
      onOrder,
      ordered: (coming[index]?.orders ?? []).map(orderInWords),
      toOrder: Math.max(0, line.quantity + line.spares - onOrder),
    };
  });
  return {
    lines,
    unknown,
    csv: csvOf(String(item['inventoryNumber']), lines, coming),
    basis: {
      method:
        `The value of ${series} (IEC 60063) nearest to each original, at no less than its working voltage; ` +
        'originals of unlike voltage are ordered apart. What is on its way for these places is not ordered again.',
      counted: [
        { what: 'capacitors in the order', count: known.length },
        { what: 'capacitors without a recorded capacitance', count: unknown.length },
      ],
      assumptions: ['What the fit-out expects is what the set was made with.'],
      asOf: new Date(nowMs).toISOString(),
    },
  };
}

const header = [
  'Item',
  'Places',
  'Capacitance in uF',
  'Working voltage at least, V',
  'Needed',
  'Spares',
  'To order',
  'Replaces, uF',
  ...orderHeads,
];

const csvOf = (
  inventoryNumber: string,
  order: readonly ReplacementLine[],
  coming: readonly { orders: OrderOnItsWay[] }[],
): string =>
  csvText([
    header,
    ...order.map((line, index) =>
      [
        inventoryNumber,
        line.designators.join(' '),
        line.microfarads,
        String(line.workingVoltsAtLeast ?? 'read it on the part'),
        String(line.quantity),
        String(line.spares),
        String(line.toOrder),
        line.originals.map(({ microfarads }) => String(microfarads)).join(' '),
        String(line.onOrder),
        ...orderCells(coming[index]?.orders ?? []),
      ].map(neutralCell),
    ),
  ]);

export const replacementRelationsOfItem = { replacementList };
