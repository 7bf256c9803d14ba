import { groupedBy } from '../../db/groupedBy.js';
import { listParameter } from '../../db/dialect.js';
import type { RowSource } from '../../db/rowSource.js';
import type { ReadingTier } from './readingTier.js';

/** A limit as it is kept: one quantity, in the unit in which it was published. */
export interface KeptLimit {
  quantity: string;
  tier: ReadingTier | null;
  lower: string | null;
  upper: string | null;
  unit: string;
  source: string | null;
}

const limitColumns = `reading_limit.quantity AS "quantity", reading_limit.tier AS "tier",
  reading_limit.lower AS "lower", reading_limit.upper AS "upper", reading_limit.unit AS "unit",
  reading_limit.source AS "source"`;

/**
 * The limits that readings on these are held against: a component's by its part type, an item's by
 * its model. @returns by the id of the component or item; none, no entry.
 */
export async function readLimitsOfSubjects(
  { rows, dialect }: RowSource,
  componentIds: readonly string[],
  itemIds: readonly string[],
): Promise<Map<string, KeptLimit[]>> {
  const ofComponents = await rows<KeptLimit & { subjectId: string }>(
    `SELECT component.id AS "subjectId", ${limitColumns}
     FROM component JOIN reading_limit ON reading_limit.part_type_id = component.part_type_id
     WHERE ${dialect.isAnyOf('component.id')} ORDER BY reading_limit.id`,
    [listParameter(componentIds)],
  );
  const ofItems = await rows<KeptLimit & { subjectId: string }>(
    `SELECT item.id AS "subjectId", ${limitColumns}
     FROM item JOIN reading_limit ON reading_limit.model_id = item.model_id
     WHERE ${dialect.isAnyOf('item.id')} ORDER BY reading_limit.id`,
    [listParameter(itemIds)],
  );
  return groupedBy([...ofComponents, ...ofItems], (limit) => limit.subjectId);
}
