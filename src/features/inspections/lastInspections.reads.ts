import { listParameter } from '../../db/dialect.js';
import type { RowSource } from '../../db/rowSource.js';

/** The latest inspection of many items up to an instant; none, no entry. */
export async function readLastInspections(
  { rows, dialect }: RowSource,
  itemIds: readonly string[],
  at: string,
): Promise<Map<string, { inspectionId: string; atMs: number }>> {
  const found = await rows<{ id: string; itemId: string; inspectedAt: string }>(
    `SELECT inspection.id AS "id", inspection.item_id AS "itemId",
       inspection.inspected_at AS "inspectedAt"
     FROM inspection WHERE ${dialect.isAnyOf('inspection.item_id')} AND inspection.inspected_at <= ?
     ORDER BY inspection.inspected_at, inspection.id`,
    [listParameter(itemIds), at],
  );
  return new Map(
    found.map(({ id, itemId, inspectedAt }) => [
      itemId,
      { inspectionId: id, atMs: Date.parse(inspectedAt) },
    ]),
  );
}
