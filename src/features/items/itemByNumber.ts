import type { GraphQLResolveInfo } from 'graphql';
import type { ApiContext } from '../../api/kit/apiContext.js';
import { equalTo } from '../../api/kit/conditions.js';
import { askedOfRows, loadRelations } from '../../api/kit/loadRelations.js';
import type { Row } from '../../api/kit/typeReads.js';
import { columnsOfItem } from './itemColumns.js';

/** The item with an inventory number, whether or not it has left the collection; null if none. */
export async function itemByNumber(
  context: ApiContext,
  info: GraphQLResolveInfo,
  typeName: 'Item' | 'Rig',
  inventoryNumber: string,
): Promise<Row | null> {
  const [isNumber] = equalTo('item.inventory_number', inventoryNumber.trim());
  const [row] = await context.database.reader.rows<Row>(
    `SELECT ${columnsOfItem(askedOfRows(info))} FROM item WHERE ${isNumber?.sql ?? ''}`,
    isNumber?.parameters,
  );
  if (!row || (typeName === 'Rig' && row.__typename !== 'Rig')) return null;
  await loadRelations(context, info, typeName, [row]);
  return row;
}
