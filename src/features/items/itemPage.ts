import type { GraphQLResolveInfo } from 'graphql';
import type { ApiContext } from '../../api/kit/apiContext.js';
import type { PageArgs } from '../../api/kit/pageArgs.js';
import { rootPage } from '../../api/kit/rootPage.js';
import { columnsOfItem } from './itemColumns.js';
import { itemConditions } from './itemConditions.js';
import type { ItemFilter } from './itemFilter.inputs.js';
import type { ItemKind } from './itemKind.js';
import { itemOrder } from './itemOrder.js';
import type { ItemSort } from './itemSort.inputs.js';
import { itemWithStanding } from './standingColumns.js';

const typeNames = { RIG: 'Rig', ACCESSORY: 'Accessory' } as const;

/** A page of items of one kind, or of both. */
export async function itemPage(
  context: ApiContext,
  info: GraphQLResolveInfo,
  page: PageArgs,
  asked: { kind: ItemKind | null; filter: ItemFilter; sort: ItemSort | null },
) {
  const { kind, filter, sort } = asked;
  const where = itemConditions(context, kind, filter);
  const order = itemOrder(sort, context.nowMs);
  const usesStanding = [order.sortBy, ...where.map(({ sql }) => sql)].some((sql) =>
    sql.includes('item_standing'),
  );
  return rootPage(context, info, page, {
    typeName: kind === null ? 'Item' : typeNames[kind],
    from: usesStanding ? itemWithStanding : 'item',
    table: 'item',
    columns: columnsOfItem,
    ...order,
    where,
  });
}
