import { listParameter } from '../../db/dialect.js';
import type { RowSource } from '../../db/rowSource.js';

/**
 * How many of each part type lie on the shelf: components that came out to stock and sit nowhere now.
 * Part types with none are left out.
 */
export async function readStockOnHand(
  { rows, dialect }: RowSource,
  partTypeIds: readonly string[],
): Promise<ReadonlyMap<string, number>> {
  const counted = await rows<{ partTypeId: string; count: number | string }>(
    `SELECT component.part_type_id AS "partTypeId", COUNT(*) AS "count"
     FROM component
     WHERE ${dialect.isAnyOf('component.part_type_id')}
       AND EXISTS (SELECT 1 FROM fitting WHERE fitting.component_id = component.id
         AND fitting.disposition = 'STOCK'
         AND NOT EXISTS (SELECT 1 FROM fitting later WHERE later.component_id = component.id
           AND later.fitted_at >= fitting.removed_at AND later.id <> fitting.id))
     GROUP BY component.part_type_id`,
    [listParameter(partTypeIds)],
  );
  return new Map(counted.map(({ partTypeId, count }) => [partTypeId, Number(count)]));
}
