import { groupedBy } from '../../db/groupedBy.js';
import type { RowSource } from '../../db/rowSource.js';

/** What accessories of a role have cost this collector, in the home currency. */
export interface RolePrice {
  /** The median of what was paid, extra costs in it, in minor units. */
  readonly minorUnits: number;
  readonly count: number;
}

/** By role; a role of which none was bought in that currency has no entry. */
export async function readAccessoryPrices(
  { rows }: RowSource,
  currency: string,
): Promise<Map<string, RolePrice>> {
  const paid = await rows<{ role: string; paid: number | string }>(
    `SELECT item.role AS "role", item_cost.price_minor_units + item_cost.extra_minor_units AS "paid"
     FROM item JOIN item_cost ON item_cost.item_id = item.id
     WHERE item.kind = 'ACCESSORY' AND item.role IS NOT NULL AND item_cost.currency = ?
       AND item_cost.price_minor_units > 0 ORDER BY 2`,
    [currency],
  );
  return new Map(
    [...groupedBy(paid, ({ role }) => role)].map(([role, all]) => {
      const sorted = all.map((one) => Number(one.paid)).sort((left, right) => left - right);
      const middle = sorted[Math.floor((sorted.length - 1) / 2)] as number;
      return [role, { minorUnits: middle, count: sorted.length }];
    }),
  );
}
