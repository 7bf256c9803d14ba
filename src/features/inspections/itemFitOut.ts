import { queryInWork } from '../../db/queryInWork.js';
import type { UnitOfWork } from '../../db/unitOfWork.js';

export interface ItemPosition {
  positionId: string;
  designator: string;
  /** The part type that belongs there; null when the model does not say. */
  partTypeId: string | null;
}

/** What the model of an item should have, and how the item and the model are called. */
export interface ItemFitOut {
  inventoryNumber: string;
  /** Null when the item has no model. */
  modelName: string | null;
  positions: ItemPosition[];
}

/** @returns null when there is no such item. */
export async function itemFitOut(work: UnitOfWork, itemId: string): Promise<ItemFitOut | null> {
  const rows = await queryInWork<NamesAndPosition>(
    work,
    `SELECT item.inventory_number AS "inventoryNumber", model.maker AS "maker",
       model.designation AS "designation", fit_out_position.id AS "positionId",
       fit_out_position.designator AS "designator", fit_out_position.part_type_id AS "partTypeId"
     FROM item LEFT JOIN model ON model.id = item.model_id
     LEFT JOIN fit_out_position ON fit_out_position.model_id = model.id
     WHERE item.id = ? ORDER BY fit_out_position.ordinal, fit_out_position.designator`,
    [itemId],
  );
  const [first] = rows;
  if (!first) return null;
  return {
    inventoryNumber: first.inventoryNumber,
    modelName: first.designation === null ? null : `${first.maker ?? ''} ${first.designation}`,
    positions: rows.flatMap(({ positionId, designator, partTypeId }) =>
      positionId === null || designator === null ? [] : [{ positionId, designator, partTypeId }],
    ),
  };
}

interface NamesAndPosition {
  inventoryNumber: string;
  maker: string | null;
  designation: string | null;
  positionId: string | null;
  designator: string | null;
  partTypeId: string | null;
}

/** The position that a person means: `v3` is V3, unless the model has both. */
export function positionNamed(
  positions: readonly ItemPosition[],
  name: string,
): ItemPosition | undefined {
  const wanted = name.trim().replace(/\s+/g, ' ');
  return (
    positions.find(({ designator }) => designator === wanted) ??
    positions.find(({ designator }) => designator.toLowerCase() === wanted.toLowerCase())
  );
}
