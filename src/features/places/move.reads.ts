import { childPages } from '../../api/kit/childPages.js';
import { one } from '../../api/kit/relations.js';
import { selectColumns } from '../../api/kit/selectColumns.js';
import { tableReads } from '../../api/kit/tableReads.js';

const columns = selectColumns('item_move', [
  'id',
  'version',
  'itemId',
  'fromPlaceId',
  'toPlaceId',
  'movedAt',
  'note',
]);

export const moveReads = tableReads('Move', 'item_move', columns, {
  item: one('Item', 'itemId'),
  fromPlace: one('Place', 'fromPlaceId'),
  toPlace: one('Place', 'toPlaceId'),
});

export const moveRelationsOfItem = {
  moves: childPages('Move', {
    table: 'item_move',
    columns,
    parentColumn: 'item_id',
    sortColumn: 'moved_at',
    sortName: 'movedAt',
    direction: 'DESC',
  }),
};
