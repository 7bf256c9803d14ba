import { groupedBy } from '../../db/groupedBy.js';
import type { RowSource } from '../../db/rowSource.js';
import { priceSummaries, type NotedPrice } from '../../domain/parts/priceSummaries.js';
import { medianOf } from '../../domain/trend/medianOf.js';
import type { StepPrice } from './stepPrices.reads.js';

/**
 * What an accessory of each role may cost, in one currency: the median of what this collector paid,
 * extra costs in it, else of recent price notes of the models that have the role. A role without
 * either has no entry.
 */
export async function readAccessoryPrices(
  { rows }: RowSource,
  currency: string,
  today: string,
): Promise<Map<string, StepPrice>> {
  const paid = await rows<{ role: string; paid: number | string }>(
    `SELECT item.role AS "role", item_cost.price_minor_units + item_cost.extra_minor_units AS "paid"
     FROM item JOIN item_cost ON item_cost.item_id = item.id
     WHERE item.kind = 'ACCESSORY' AND item.role IS NOT NULL AND item_cost.currency = ?
       AND item_cost.price_minor_units > 0`,
    [currency],
  );
  const noted = await rows<NotedPrice & { role: string }>(
    `SELECT served.role AS "role", price_note.amount_minor_units AS "amountMinorUnits",
       price_note.currency AS "currency", price_note.quantity AS "quantity",
       price_note.noted_on AS "notedOn"
     FROM price_note JOIN (SELECT DISTINCT role, model_id FROM item
       WHERE kind = 'ACCESSORY' AND role IS NOT NULL) AS served
       ON served.model_id = price_note.model_id
     WHERE price_note.currency = ? AND price_note.struck_at IS NULL`,
    [currency],
  );
  const prices = new Map<string, StepPrice>();
  for (const [role, notes] of groupedBy(noted, ({ role: of }) => of)) {
    const [summary] = priceSummaries(notes.map(asNumbers), today);
    if (typeof summary?.medianMinorUnits !== 'number') continue;
    prices.set(role, {
      minorUnits: summary.medianMinorUnits,
      restsOn: `The median of ${summary.recentCount} recent price notes for this role.`,
    });
  }
  for (const [role, bought] of groupedBy(paid, ({ role: of }) => of)) {
    prices.set(role, {
      minorUnits: Math.round(medianOf(bought.map((one) => Number(one.paid)))),
      restsOn: `The median of ${bought.length} bought for this role.`,
    });
  }
  return prices;
}

const asNumbers = (note: NotedPrice): NotedPrice => ({
  ...note,
  amountMinorUnits: Number(note.amountMinorUnits),
});
