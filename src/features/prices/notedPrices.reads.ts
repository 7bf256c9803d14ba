import { listParameter } from '../../db/dialect.js';
import { groupedBy } from '../../db/groupedBy.js';
import type { RowSource } from '../../db/rowSource.js';
import type { NotedPrice } from '../../domain/parts/priceSummaries.js';

type PricedRow = NotedPrice & { ownerId: string };

/** Prices that count, of many part types or models, in one statement; the newest last. */
export async function readNotedPrices(
  { rows, dialect }: RowSource,
  owner: 'part_type_id' | 'model_id',
  ids: readonly string[],
): Promise<Map<string, PricedRow[]>> {
  const found = await rows<PricedRow>(
    `SELECT price_note.${owner} AS "ownerId", price_note.amount_minor_units AS "amountMinorUnits",
       price_note.currency AS "currency", price_note.quantity AS "quantity",
       price_note.noted_on AS "notedOn"
     FROM price_note WHERE ${dialect.isAnyOf(`price_note.${owner}`)}
       AND price_note.struck_at IS NULL
     ORDER BY price_note.noted_on, price_note.id`,
    [listParameter(ids)],
  );
  return groupedBy(found, (row) => row.ownerId);
}
