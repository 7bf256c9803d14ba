import { queryInWork } from '../../db/queryInWork.js';
import { Refusal } from '../../db/refusal.js';
import type { UnitOfWork } from '../../db/unitOfWork.js';

/** Nothing sits inside itself, through however many housings. */
export async function refuseHousingCircle(
  work: UnitOfWork,
  accessoryId: string,
  housingId: string,
): Promise<void> {
  const around = await queryInWork<{ id: string; inventoryNumber: string; housedInId: string }>(
    work,
    `WITH RECURSIVE around (id, inventory_number, housed_in_id) AS (
       SELECT id, inventory_number, housed_in_id FROM item WHERE id = ?
       UNION SELECT item.id, item.inventory_number, item.housed_in_id
       FROM item JOIN around ON item.id = around.housed_in_id
     ) SELECT id AS "id", inventory_number AS "inventoryNumber", housed_in_id AS "housedInId"
     FROM around`,
    [housingId],
  );
  const byId = new Map(around.map((item) => [item.id, item]));
  if (!byId.has(accessoryId)) return;
  const path: string[] = [];
  for (let item = byId.get(housingId); item; item = byId.get(item.housedInId)) {
    path.push(item.inventoryNumber);
    if (item.id === accessoryId) break;
  }
  throw Refusal.conflict(
    `That would house it inside itself: ${[path.at(-1), ...path].join(' in ')}.`,
    ['housingId'],
  );
}
