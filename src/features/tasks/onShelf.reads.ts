import { listParameter, type Dialect } from '../../db/dialect.js';
import type { RowSource } from '../../db/rowSource.js';
import { stockLevels } from '../stock/stockLevels.js';

/**
 * How many of each part type lie ready for anybody: units of stock lots that are neither drawn,
 * put aside nor for repair, and loose components that are in no lot, sit in no item and were last
 * put on the shelf (or never fitted at all). One statement; types of which there are none have no
 * entry.
 */
export async function readOnShelf(
  query: RowSource['rows'],
  dialect: Dialect,
  partTypeIds: readonly string[],
): Promise<Map<string, number>> {
  const rows = await query<{ partTypeId: string; count: number | string }>(
    `SELECT "partTypeId", SUM("count") AS "count" FROM (
       SELECT stock_lot.part_type_id AS "partTypeId", ${stockLevels.available} AS "count"
       FROM stock_lot
       WHERE ${dialect.isAnyOf('stock_lot.part_type_id')} AND stock_lot.condition <> 'FOR_REPAIR'
       UNION ALL
       SELECT component.part_type_id AS "partTypeId", 1 AS "count" FROM component
       WHERE ${dialect.isAnyOf('component.part_type_id')}
         AND NOT EXISTS (SELECT 1 FROM stock_lot WHERE stock_lot.component_id = component.id)
         AND NOT EXISTS (SELECT 1 FROM fitting
           WHERE fitting.component_id = component.id AND fitting.removed_at IS NULL)
         AND COALESCE((SELECT fitting.disposition FROM fitting
           WHERE fitting.component_id = component.id
           ORDER BY fitting.removed_at DESC LIMIT 1), 'STOCK') = 'STOCK'
     ) AS ready GROUP BY "partTypeId"`,
    [listParameter(partTypeIds), listParameter(partTypeIds)],
  );
  return new Map(rows.map(({ partTypeId, count }) => [partTypeId, Number(count)]));
}

/** What tasks have put aside and not drawn yet, by `task part-type`. One statement. */
export async function readPutAside(
  query: RowSource['rows'],
  dialect: Dialect,
  taskIds: readonly string[],
): Promise<Map<string, number>> {
  const rows = await query<{ taskId: string; partTypeId: string; open: number | string }>(
    `SELECT stock_reservation.task_id AS "taskId", stock_lot.part_type_id AS "partTypeId",
       SUM(${stockLevels.openOfReservation}) AS "open"
     FROM stock_reservation JOIN stock_lot ON stock_lot.id = stock_reservation.lot_id
     WHERE stock_lot.part_type_id IS NOT NULL AND ${dialect.isAnyOf('stock_reservation.task_id')}
     GROUP BY stock_reservation.task_id, stock_lot.part_type_id`,
    [listParameter(taskIds)],
  );
  return new Map(
    rows.map(({ taskId, partTypeId, open }) => [`${taskId} ${partTypeId}`, Number(open)]),
  );
}
