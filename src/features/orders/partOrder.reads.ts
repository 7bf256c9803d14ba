import { childPages } from '../../api/kit/childPages.js';
import { one } from '../../api/kit/relations.js';
import { selectColumns } from '../../api/kit/selectColumns.js';
import { tableReads } from '../../api/kit/tableReads.js';
import type { Relation, Row } from '../../api/kit/typeReads.js';

const columns = selectColumns('part_order', [
  'id',
  'version',
  'itemId',
  'partTypeId',
  'description',
  'designators',
  'wantId',
  'quantity',
  'orderedFrom',
  'orderedOn',
  'expectedOn',
  'reference',
  'note',
  'arrivedOn',
  'cancelledAt',
]);

/** What is still on its way. */
export const isOnItsWay = 'part_order.arrived_on IS NULL AND part_order.cancelled_at IS NULL';

export const partOrderReads = tableReads('PartOrder', 'part_order', columns, {
  item: one('Item', 'itemId'),
  partType: one('PartType', 'partTypeId'),
  want: one('Want', 'wantId'),
});

export const orderRelationsOfItem: Record<string, Relation> = {
  partOrders: childPages('PartOrder', {
    table: 'part_order',
    columns,
    parentColumn: 'item_id',
    sortColumn: 'ordered_on',
    sortName: 'orderedOn',
    direction: 'DESC',
    where: isOnItsWay,
  }),
};

/** The orders that a computed row counts, by the ids that it names in `orderIds`. */
export const ordersByIds: Relation = async (context, parents) => {
  const idsOf = (row: Row): readonly string[] => row['orderIds'] as string[];
  const ids = [...new Set(parents.flatMap(idsOf))];
  const children = (await context.reads.get('PartOrder')?.byIds(context, ids)) ?? [];
  const byId = new Map(children.map((row) => [row.id, row]));
  const values = parents.map((row) => idsOf(row).flatMap((id) => byId.get(id) ?? []));
  return { values, children, childType: 'PartOrder' };
};
