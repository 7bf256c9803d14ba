import { listParameter } from '../../db/dialect.js';
import type { RowSource } from '../../db/rowSource.js';
import type { AccessoryRole } from '../items/accessoryRole.js';
import type { ItemKind } from '../items/itemKind.js';

export interface StandingItem {
  id: string;
  kind: ItemKind;
  inventoryNumber: string;
  name: string | null;
  model: string | null;
  serialNumber: string | null;
  housedInId: string | null;
  retiredAt: string | null;
  /** True while it is lent out or missing; 0 or 1 from SQLite. */
  isAway?: boolean | number;
  /** It came into the collection only after the moment asked about. */
  isYetToCome?: boolean;
}

/** An accessory that serves a rig now. */
export interface ServiceNow {
  id: string;
  startedAt: string;
  rigId: string;
  accessoryId: string;
  role: AccessoryRole;
}

export const standingItemColumns = `item.id AS "id", item.kind AS "kind", item.inventory_number AS "inventoryNumber",
  item.name AS "name", item.serial_number AS "serialNumber", model.designation AS "model", item.housed_in_id AS "housedInId",
  item.retired_at AS "retiredAt",
  (EXISTS (SELECT 1 FROM loan WHERE loan.item_id = item.id AND loan.direction = 'OUT'
     AND loan.returned_on IS NULL)
   OR EXISTS (SELECT 1 FROM item_loss WHERE item_loss.item_id = item.id
     AND item_loss.found_on IS NULL)) AS "isAway"`;

/** Some items, the accessories that serve them, and everything that any of these is housed in. */
export function readStandingItems(
  { rows, dialect }: RowSource,
  itemIds: readonly string[],
): Promise<StandingItem[]> {
  const ids = listParameter(itemIds);
  return rows<StandingItem>(
    `WITH RECURSIVE near (id) AS (
       SELECT id FROM item WHERE ${dialect.isAnyOf('id')}
       UNION SELECT accessory_id FROM item_service
         WHERE ended_at IS NULL AND ${dialect.isAnyOf('rig_id')}
       UNION SELECT item.housed_in_id FROM item JOIN near ON item.id = near.id
         WHERE item.housed_in_id IS NOT NULL
     )
     SELECT ${standingItemColumns} FROM item JOIN near ON near.id = item.id
     LEFT JOIN model ON model.id = item.model_id ORDER BY item.id`,
    [ids, ids],
  );
}

/** @param at those that served at an instant; left out: that serve now. */
export const readServices = (
  { rows, dialect }: RowSource,
  rigIds: readonly string[],
  at?: string,
) =>
  rows<ServiceNow>(
    `SELECT id AS "id", rig_id AS "rigId", accessory_id AS "accessoryId", role AS "role",
       started_at AS "startedAt" FROM item_service
     WHERE ${dialect.isAnyOf('rig_id')} AND ${
       at === undefined
         ? 'ended_at IS NULL'
         : 'started_at <= ? AND (ended_at IS NULL OR ended_at > ?)'
     } ORDER BY id`,
    [listParameter(rigIds), ...(at === undefined ? [] : [at, at])],
  );

/** Accessory roles that the models of some rigs cannot work without. */
export const readRequiredRoles = ({ rows, dialect }: RowSource, rigIds: readonly string[]) =>
  rows<{ itemId: string; role: AccessoryRole }>(
    `SELECT item.id AS "itemId", model_role.role AS "role" FROM item
     JOIN model_role ON model_role.model_id = item.model_id
     WHERE model_role.is_required AND ${dialect.isAnyOf('item.id')} ORDER BY model_role.role`,
    [listParameter(rigIds)],
  );

export const readExpenses = ({ rows, dialect }: RowSource, itemIds: readonly string[]) =>
  rows<{ itemId: string; projectId: string | null; amount: number | string; currency: string }>(
    `SELECT item_id AS "itemId", project_id AS "projectId", amount_minor_units AS "amount",
       currency AS "currency"
     FROM expense WHERE ${dialect.isAnyOf('item_id')} ORDER BY id`,
    [listParameter(itemIds)],
  );

export const readProjects = ({ rows, dialect }: RowSource, itemIds: readonly string[]) =>
  rows<{ itemId: string; id: string }>(
    `SELECT item_id AS "itemId", id AS "id" FROM project
     WHERE ${dialect.isAnyOf('item_id')} ORDER BY id`,
    [listParameter(itemIds)],
  );
