import { listParameter } from '../../db/dialect.js';
import { groupedBy } from '../../db/groupedBy.js';
import type { RowSource } from '../../db/rowSource.js';
import type { Lot } from '../../domain/money/lotShares.js';
import type { Money } from '../../domain/money/money.js';
import type { SpreadMethod } from './spreadMethod.js';

/** A line as it is kept. */
export interface KeptLotLine {
  id: string;
  version: number;
  ordinal: number;
  itemId: string | null;
  sundries: string | null;
  statedShare: string | null;
  statedValueMinorUnits: number | null;
}

/** A whole lot, ready to be spread. */
export interface KeptLot extends Lot {
  acquisitionId: string;
  lines: KeptLotLine[];
}

interface LotRow {
  id: string;
  price: number | string;
  currency: string;
  spreadMethod: SpreadMethod;
}
type LineRow = KeptLotLine & { acquisitionId: string };
interface CostRow {
  acquisitionId: string;
  amount: number | string;
  currency: string;
}

const named = { lot: 'acquisition.id', line: 'lot_line.id', item: 'lot_line.item_id' };

/** The whole lots that are named, or that hold the lines or items named. Three statements. */
export async function readLots(
  source: RowSource,
  by: keyof typeof named,
  ids: readonly string[],
): Promise<KeptLot[]> {
  if (ids.length === 0) return [];
  const from = by === 'lot' ? 'acquisition' : 'lot_line';
  const lotId = by === 'lot' ? 'acquisition.id' : 'lot_line.acquisition_id';
  const wanted = `(SELECT ${lotId} FROM ${from} WHERE ${source.dialect.isAnyOf(named[by])})`;
  const parameters = [listParameter(ids)];
  const lots = await source.rows<LotRow>(
    `SELECT id AS "id", price_minor_units AS "price", currency AS "currency",
       spread_method AS "spreadMethod"
     FROM acquisition WHERE id IN ${wanted} ORDER BY id`,
    parameters,
  );
  const lines = await source.rows<LineRow>(
    `SELECT acquisition_id AS "acquisitionId", id AS "id", version AS "version",
       ordinal AS "ordinal", item_id AS "itemId", sundries AS "sundries",
       stated_share AS "statedShare", stated_value_minor_units AS "statedValueMinorUnits"
     FROM lot_line WHERE acquisition_id IN ${wanted} ORDER BY acquisition_id, ordinal, id`,
    parameters,
  );
  const costs = await source.rows<CostRow>(
    `SELECT acquisition_id AS "acquisitionId", amount_minor_units AS "amount",
       currency AS "currency"
     FROM extra_cost WHERE acquisition_id IN ${wanted}`,
    parameters,
  );
  const linesOf = groupedBy(lines, (line) => line.acquisitionId);
  const costsOf = groupedBy(costs, (cost) => cost.acquisitionId);
  return lots.map(({ id, price, currency, spreadMethod }) => ({
    acquisitionId: id,
    price: money(price, currency),
    spreadMethod,
    lines: (linesOf.get(id) ?? []).map(exactLine),
    extraCosts: (costsOf.get(id) ?? []).map((cost) => money(cost.amount, cost.currency)),
  }));
}

const money = (amount: number | string, currency: string): Money => ({
  minorUnits: Number(amount),
  currency,
});

function exactLine({ acquisitionId: _lot, ...line }: LineRow): KeptLotLine {
  const value = line.statedValueMinorUnits;
  return { ...line, statedValueMinorUnits: value === null ? null : Number(value) };
}
