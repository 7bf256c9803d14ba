import { listParameter } from '../../db/dialect.js';
import { undescribedCollection } from '../collection/undescribedCollection.js';
import type { RowSource } from '../../db/rowSource.js';

/** Which items a schedule lists: all in hand, some by number, those that stand in some place. */
export interface ScheduleOf {
  numbers: readonly string[] | null;
  placeName: string | null;
}

export interface ScheduledItem {
  itemId: string;
  modelId: string | null;
  kind: 'RIG' | 'ACCESSORY';
  inventoryNumber: string;
  name: string | null;
  modelName: string | null;
  serialNumber: string | null;
}

/** Items in hand or lent, by number; a place counts with everything within it. */
export function readScheduledItems(
  { rows, dialect }: RowSource,
  { numbers, placeName }: ScheduleOf,
): Promise<ScheduledItem[]> {
  const conditions = ['item.retired_at IS NULL'];
  const parameters: string[] = [];
  if (numbers !== null) {
    conditions.push(dialect.isAnyOf('item.inventory_number'));
    parameters.push(listParameter(numbers));
  }
  if (placeName !== null) {
    conditions.push(`item.place_id IN (WITH RECURSIVE inner_place (id) AS (
      SELECT id FROM place WHERE name = ?
      UNION SELECT place.id FROM place JOIN inner_place ON place.within_id = inner_place.id
    ) SELECT id FROM inner_place)`);
    parameters.push(placeName);
  }
  return rows<ScheduledItem>(
    `SELECT item.id AS "itemId", item.model_id AS "modelId", item.kind AS "kind",
       item.inventory_number AS "inventoryNumber", item.name AS "name",
       item.serial_number AS "serialNumber", model.maker || ' ' || model.designation AS "modelName"
     FROM item LEFT JOIN model ON model.id = item.model_id
     WHERE ${conditions.join(' AND ')} ORDER BY item.inventory_number`,
    parameters,
  );
}

export async function readCollectionName({ rows }: RowSource): Promise<string> {
  const [collection] = await rows<{ name: string }>('SELECT name AS "name" FROM collection');
  return collection?.name ?? undescribedCollection('UTC').name;
}

/** The cover picture of each item: the whole thing if there is one, else the first picture. */
export async function readCovers(
  { rows, dialect }: RowSource,
  itemIds: readonly string[],
): Promise<Map<string, string>> {
  const found = await rows<{ itemId: string; digest: string }>(
    `SELECT attachment.subject_id AS "itemId", stored_file.digest AS "digest"
     FROM attachment JOIN stored_file ON stored_file.id = attachment.file_id
     WHERE attachment.detached_at IS NULL AND stored_file.media_type LIKE 'image/%'
       AND ${dialect.isAnyOf('attachment.subject_id')}
     ORDER BY CASE attachment.role WHEN 'OVERALL' THEN 0 WHEN 'AFTER' THEN 1 ELSE 2 END,
       attachment.ordinal, attachment.id`,
    [listParameter(itemIds)],
  );
  const covers = new Map<string, string>();
  for (const { itemId, digest } of found) if (!covers.has(itemId)) covers.set(itemId, digest);
  return covers;
}
