import { listParameter } from '../../db/dialect.js';
import type { RowSource } from '../../db/rowSource.js';
import { stockLevels } from '../stock/stockLevels.js';

/**
 * How many of each part type are on the shelf and not put aside for a task. Part types with none are
 * left out.
 */
export async function readStockOnHand(
  { rows, dialect }: RowSource,
  partTypeIds: readonly string[],
): Promise<ReadonlyMap<string, number>> {
  const levels = await rows<{ partTypeId: string; available: number | string }>(
    `SELECT stock_lot.part_type_id AS "partTypeId", SUM(${stockLevels.available}) AS "available"
     FROM stock_lot WHERE ${dialect.isAnyOf('stock_lot.part_type_id')}
     GROUP BY stock_lot.part_type_id`,
    [listParameter(partTypeIds)],
  );
  return new Map(levels.map(({ partTypeId, available }) => [partTypeId, Number(available)]));
}
