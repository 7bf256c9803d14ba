import { queryInWork } from '../../db/queryInWork.js';
import type { UnitOfWork } from '../../db/unitOfWork.js';
import type { AccessoryRole } from '../items/accessoryRole.js';

export interface RunningService {
  id: string;
  role: AccessoryRole;
  isExclusive: boolean;
  accessoryId: string;
  rigId: string;
  rigNumber: string;
}

/** What an accessory serves, or what serves a rig, at present. */
export async function servicesOf(work: UnitOfWork, itemId: string): Promise<RunningService[]> {
  const rows = await queryInWork<RunningService>(
    work,
    `SELECT item_service.id AS "id", item_service.role AS "role",
       item_service.is_exclusive AS "isExclusive", item_service.accessory_id AS "accessoryId",
       item_service.rig_id AS "rigId", rig.inventory_number AS "rigNumber"
     FROM item_service JOIN item AS rig ON rig.id = item_service.rig_id
     WHERE item_service.ended_at IS NULL
       AND (item_service.accessory_id = ? OR item_service.rig_id = ?)
     ORDER BY rig.inventory_number, item_service.id`,
    [itemId, itemId],
  );
  return rows.map((row) => ({ ...row, isExclusive: Boolean(row.isExclusive) }));
}
