import { argumentProblem } from '../../api/kit/argumentProblem.js';
import type { Reader } from '../../db/reader.js';

/** The record id behind an inventory number; null for none given. @throws GraphQLError */
export async function itemIdByNumber(
  reader: Reader,
  inventoryNumber: string | null,
): Promise<string | null> {
  if (inventoryNumber === null) return null;
  const [item] = await reader.rows<{ id: string }>(
    'SELECT id AS "id" FROM item WHERE inventory_number = ?',
    [inventoryNumber],
  );
  if (item) return item.id;
  throw argumentProblem(
    `There is no item with the inventory number “${inventoryNumber.slice(0, 40)}”.`,
  );
}
