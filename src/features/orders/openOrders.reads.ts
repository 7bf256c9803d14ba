import { listParameter } from '../../db/dialect.js';
import type { RowSource } from '../../db/rowSource.js';
import type { OpenOrder } from '../../domain/parts/openOrder.js';
import { isOnItsWay } from './partOrder.reads.js';

/** An order that is on its way. */
export interface OrderOnItsWay extends OpenOrder {
  itemId: string | null;
  wantId: string | null;
  orderedFrom: string;
  orderedOn: string;
  expectedOn: string | null;
}

/** What is on its way for these items or these wants, the oldest order first. */
export async function readOpenOrders(
  { rows, dialect }: RowSource,
  of: { itemIds: readonly string[]; wantIds?: readonly string[] },
): Promise<OrderOnItsWay[]> {
  const found = await rows<Omit<OrderOnItsWay, 'designators'> & { designators: string }>(
    `SELECT id AS "id", item_id AS "itemId", want_id AS "wantId", part_type_id AS "partTypeId",
       description AS "description", designators AS "designators", quantity AS "quantity",
       ordered_from AS "orderedFrom", ordered_on AS "orderedOn", expected_on AS "expectedOn"
     FROM part_order
     WHERE ${isOnItsWay} AND (${dialect.isAnyOf('item_id')} OR ${dialect.isAnyOf('want_id')})
     ORDER BY ordered_on, id`,
    [listParameter(of.itemIds), listParameter(of.wantIds ?? [])],
  );
  return found.map((order) => ({
    ...order,
    designators: JSON.parse(order.designators) as string[],
  }));
}
