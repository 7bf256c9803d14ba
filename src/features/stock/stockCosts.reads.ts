import type { Basis } from '../../api/kit/basis.type.js';
import type { MoneyAmount } from '../../api/kit/money.type.js';
import type { Relation } from '../../api/kit/typeReads.js';
import { listParameter } from '../../db/dialect.js';
import type { RowSource } from '../../db/rowSource.js';
import type { Money } from '../../domain/money/money.js';
import { costOfUnits } from '../../domain/stock/costOfUnits.js';
import { readLotLines } from '../acquisitions/lotShares.reads.js';
import { moneyAmount } from '../money/moneyAmount.js';

interface LotCost {
  quantity: number;
  /** One amount a currency; null: not known. */
  total: readonly Money[] | null;
}

/** What whole lots cost: as stated, or what falls to their line of an acquisition. */
export async function readLotCosts(
  source: RowSource,
  lotIds: readonly string[],
): Promise<Map<string, LotCost>> {
  const lots = await source.rows<LotRow>(
    `SELECT id AS "id", quantity AS "quantity", lot_line_id AS "lotLineId",
       cost_minor_units AS "minorUnits", currency AS "currency"
     FROM stock_lot WHERE ${source.dialect.isAnyOf('id')}`,
    [listParameter(lotIds)],
  );
  const lineIds = lots.flatMap((lot) => lot.lotLineId ?? []);
  const lines = await readLotLines(source, 'line', lineIds);
  const totals = new Map(lines.map((line) => [line.id, line.totals]));
  const totalOf = ({ lotLineId, minorUnits, currency }: LotRow): readonly Money[] | null => {
    if (lotLineId !== null) return totals.get(lotLineId) ?? null;
    return minorUnits === null || currency === null
      ? null
      : [{ minorUnits: Number(minorUnits), currency }];
  };
  return new Map(lots.map((lot) => [lot.id, { quantity: lot.quantity, total: totalOf(lot) }]));
}

interface LotRow {
  id: string;
  quantity: number;
  lotLineId: string | null;
  minorUnits: number | string | null;
  currency: string | null;
}

interface StockCost {
  amounts: MoneyAmount[];
  basis: Basis;
}

const costFor = (
  { quantity, total }: LotCost,
  unitsBefore: number,
  units: number,
  nowMs: number,
): StockCost | null =>
  total === null || unitsBefore + units > quantity
    ? null
    : {
        amounts: total.map(({ minorUnits, currency }) =>
          moneyAmount(
            quantity === 0 ? 0 : costOfUnits(minorUnits, quantity, unitsBefore, units),
            currency,
          ),
        ),
        basis: {
          method:
            'First in, first out: each unit of a lot costs its share of what the lot cost, so that ' +
            'all units together cost that to the last minor unit.',
          counted: [
            { what: 'units of the lot', count: quantity },
            { what: 'units that left the lot before', count: unitsBefore },
            { what: 'units costed', count: units },
          ],
          assumptions: ['Units leave a lot in the order in which their draws were recorded.'],
          asOf: new Date(nowMs).toISOString(),
        },
      };

/** What a whole lot cost; null when nobody wrote it down. */
export const costOfLot: Relation = async ({ database, nowMs }, lots) => {
  const costs = await readLotCosts(
    database.reader,
    lots.map(({ id }) => id),
  );
  const values = lots.map(({ id }) => {
    const cost = costs.get(id);
    return cost ? costFor(cost, 0, cost.quantity, nowMs) : null;
  });
  return { values, children: [], childType: null };
};

/** What the units of a draw cost; null when nobody wrote down what their lot cost. */
export const costOfDraw: Relation = async ({ database: { reader }, nowMs }, draws) => {
  const lotIds = [...new Set(draws.map((draw) => draw['lotId'] as string))];
  const costs = await readLotCosts(reader, lotIds);
  const before = await reader.rows<{ id: string; unitsBefore: number }>(
    `SELECT stock_draw.id AS "id", CAST(SUM(stock_draw.quantity) OVER (
       PARTITION BY stock_draw.lot_id ORDER BY stock_draw.id) - stock_draw.quantity AS INTEGER)
       AS "unitsBefore"
     FROM stock_draw WHERE ${reader.dialect.isAnyOf('stock_draw.lot_id')}`,
    [listParameter(lotIds)],
  );
  const unitsBefore = new Map(before.map((row) => [row.id, row.unitsBefore]));
  const values = draws.map((draw) => {
    const cost = costs.get(draw['lotId'] as string);
    return cost
      ? costFor(cost, unitsBefore.get(draw.id) ?? 0, draw['quantity'] as number, nowMs)
      : null;
  });
  return { values, children: [], childType: null };
};
