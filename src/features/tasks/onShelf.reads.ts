import { listParameter, type Dialect } from '../../db/dialect.js';
import type { Query } from '../../db/query.js';

/**
 * How many components of each part type lie ready: in no item now, and last put on the shelf (or
 * never fitted at all). One statement; types of which there are none have no entry.
 */
export async function readOnShelf(
  query: Query,
  dialect: Dialect,
  partTypeIds: readonly string[],
): Promise<Map<string, number>> {
  const rows = await query<{ partTypeId: string; count: number | string }>(
    `SELECT component.part_type_id AS "partTypeId", COUNT(*) AS "count" FROM component
     WHERE ${dialect.isAnyOf('component.part_type_id')}
       AND NOT EXISTS (SELECT 1 FROM fitting
         WHERE fitting.component_id = component.id AND fitting.removed_at IS NULL)
       AND COALESCE((SELECT fitting.disposition FROM fitting
         WHERE fitting.component_id = component.id
         ORDER BY fitting.removed_at DESC LIMIT 1), 'STOCK') = 'STOCK'
     GROUP BY component.part_type_id`,
    [listParameter(partTypeIds)],
  );
  return new Map(rows.map(({ partTypeId, count }) => [partTypeId, Number(count)]));
}
