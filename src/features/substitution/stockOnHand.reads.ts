import type { RowSource } from '../../db/rowSource.js';

/** How many of each part type are on the shelf and not put aside; those with none are left out. */
export function readStockOnHand(
  _source: RowSource,
  _partTypeIds: readonly string[],
): Promise<ReadonlyMap<string, number>> {
  return Promise.resolve(new Map());
}
