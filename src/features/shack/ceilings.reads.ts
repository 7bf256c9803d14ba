import type { RowSource } from '../../db/rowSource.js';

interface Place {
  itemId: string;
  positionKey: string;
  partTypeId: string | null;
}

/**
 * The ceiling of an open want for a place of a set, else for its part type anywhere, in one
 * currency, minor units for one; null where no want has one.
 */
export async function readCeilings(
  { rows }: RowSource,
  currency: string,
): Promise<(place: Place) => number | null> {
  const wants = await rows<{
    itemId: string | null;
    designator: string | null;
    partTypeId: string | null;
    ceiling: number | string;
  }>(
    `SELECT item_id AS "itemId", designator AS "designator", part_type_id AS "partTypeId",
       ceiling_minor_units AS "ceiling"
     FROM want WHERE dropped_at IS NULL AND ceiling_minor_units IS NOT NULL
       AND ceiling_currency = ? ORDER BY id`,
    [currency],
  );
  return ({ itemId, positionKey, partTypeId }) => {
    const want =
      wants.find((one) => one.itemId === itemId && one.designator === positionKey) ??
      (partTypeId === null ? undefined : wants.find((one) => one.partTypeId === partTypeId));
    return want ? Number(want.ceiling) : null;
  };
}
