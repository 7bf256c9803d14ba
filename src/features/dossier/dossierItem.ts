import type { Reader } from '../../db/reader.js';

export interface DossierItem {
  id: string;
  kind: string;
  inventoryNumber: string;
  name: string | null;
  role: string | null;
  serialNumber: string | null;
  madeEdtf: string | null;
  note: string | null;
  maker: string | null;
  designation: string | null;
  description: string | null;
  firstYearMade: number | null;
  lastYearMade: number | null;
  placeName: string | null;
  investedSeconds: number | null;
}

/** What identifies an item; null if there is none with this id. */
export async function dossierItem(reader: Reader, itemId: string): Promise<DossierItem | null> {
  const [item] = await reader.rows<DossierItem>(
    `SELECT item.id AS "id", item.kind AS "kind", item.inventory_number AS "inventoryNumber",
       item.name AS "name", item.role AS "role", item.serial_number AS "serialNumber",
       item.made_edtf AS "madeEdtf", item.note AS "note", model.maker AS "maker",
       model.designation AS "designation", model.description AS "description",
       model.first_year_made AS "firstYearMade", model.last_year_made AS "lastYearMade",
       place.name AS "placeName", item_standing.invested_seconds AS "investedSeconds"
     FROM item LEFT JOIN model ON model.id = item.model_id
     LEFT JOIN place ON place.id = item.place_id
     LEFT JOIN item_standing ON item_standing.item_id = item.id
     WHERE item.id = ?`,
    [itemId],
  );
  return item ?? null;
}
