import { childPages } from '../../api/kit/childPages.js';
import { one } from '../../api/kit/relations.js';
import { selectColumns } from '../../api/kit/selectColumns.js';
import { tableReads } from '../../api/kit/tableReads.js';

const columns = selectColumns('final_check', [
  'id',
  'version',
  'itemId',
  'procedure',
  'checkedAt',
  'isPassed',
  'validDays',
  'checkedById',
  'note',
]);

export const finalCheckReads = tableReads('FinalCheck', 'final_check', columns, {
  item: one('Item', 'itemId'),
  checkedBy: one('Party', 'checkedById'),
});

export const finalCheckRelationsOfItem = {
  finalChecks: childPages('FinalCheck', {
    table: 'final_check',
    columns,
    parentColumn: 'item_id',
    sortColumn: 'checked_at',
    sortName: 'checkedAt',
    direction: 'DESC',
  }),
};
