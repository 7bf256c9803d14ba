import { list, one } from '../../api/kit/relations.js';
import { selectColumns } from '../../api/kit/selectColumns.js';
import { tableReads } from '../../api/kit/tableReads.js';

const columns = selectColumns('place', ['id', 'version', 'name', 'withinId', 'note', 'retiredAt']);

export const placeReads = tableReads('Place', 'place', columns, {
  within: one('Place', 'withinId'),
  inner: list('Place', {
    table: 'place',
    columns,
    parentColumn: 'within_id',
    orderBy: 'place.name, place.id',
  }),
});
