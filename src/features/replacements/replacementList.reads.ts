import { argumentProblem } from '../../api/kit/argumentProblem.js';
import type { Relation, Row } from '../../api/kit/typeReads.js';
import { replacementOrder, type OrderLine } from '../../domain/parts/replacementOrder.js';
import { csvText } from '../export/csvText.js';
import { preferredSeries } from '../reference/valueTables.js';
import type { PreferredSeries } from '../reference/valueCodes.type.js';
import { readCapacitorPlaces, type CapacitorPlaces } from './capacitorPlaces.reads.js';
import { neutralCell } from './neutralCell.js';
import type { ReplacementList } from './replacementList.type.js';

const mostSpares = 100;
/** Customary for the paper and electrolytic capacitors that are replaced. Common practice, no source. */
const alternativesWithinPercent = 20;

const replacementList: Relation = async (context, items, args) => {
  const spares = Number(args['spares'] ?? 0);
  if (spares < 0 || spares > mostSpares)
    throw argumentProblem(`Ask for 0 to ${mostSpares} spares.`);
  const series = (args['series'] ?? 'E6') as PreferredSeries;
  const ids = items.map(({ id }) => id);
  const places = await readCapacitorPlaces(context.database.reader, ids);
  const values = items.map((item) => {
    const own = places.get(item.id) ?? { known: [], unknown: [] };
    return listOf(item, own, series, spares, context.nowMs);
  });
  return { values, children: [], childType: null };
};

function listOf(
  item: Row,
  { known, unknown }: CapacitorPlaces,
  series: PreferredSeries,
  spares: number,
  nowMs: number,
): ReplacementList {
  const oneDecade = preferredSeries.get(series)?.values ?? [];
  const order = replacementOrder(known, oneDecade, spares, alternativesWithinPercent);
  const lines = order.map((line) => ({
    ...line,
    designators: [...line.designators],
    originals: [...line.originals],
    alternatives: [...line.alternatives],
  }));
  return {
    lines,
    unknown,
    csv: csvOf(String(item['inventoryNumber']), order),
    basis: {
      method:
        `The value of ${series} (IEC 60063) nearest to each original, at no less than its working voltage; ` +
        'originals of unlike voltage are ordered apart.',
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
];

const csvOf = (inventoryNumber: string, order: readonly OrderLine[]): string =>
  csvText([
    header,
    ...order.map((line) =>
      [
        inventoryNumber,
        line.designators.join(' '),
        line.microfarads,
        String(line.workingVoltsAtLeast ?? 'read it on the part'),
        String(line.quantity),
        String(line.spares),
        String(line.quantity + line.spares),
        line.originals.map(({ microfarads }) => String(microfarads)).join(' '),
      ].map(neutralCell),
    ),
  ]);

export const replacementRelationsOfItem = { replacementList };
