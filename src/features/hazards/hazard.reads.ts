import { list, one } from '../../api/kit/relations.js';
import { selectColumns } from '../../api/kit/selectColumns.js';
import { tableReads } from '../../api/kit/tableReads.js';
import type { Relation } from '../../api/kit/typeReads.js';

export const hazardColumns = selectColumns('hazard', [
  'id',
  'version',
  'itemId',
  'findingId',
  'kind',
  'note',
  'raisedAt',
  'clearedAt',
  'clearedByCheck',
  'clearedById',
]);

export const hazardReads = tableReads('Hazard', 'hazard', hazardColumns, {
  item: one('Item', 'itemId'),
  finding: one('Finding', 'findingId'),
  clearedBy: one('Party', 'clearedById'),
});

/** Those that stand first, then those cleared. */
const hazardsBy = (parentColumn: string): Relation =>
  list('Hazard', {
    table: 'hazard',
    columns: hazardColumns,
    parentColumn,
    orderBy:
      'CASE WHEN hazard.cleared_at IS NULL THEN 0 ELSE 1 END, hazard.raised_at DESC, hazard.id',
  });

export const hazardRelationsOfItem = { hazards: hazardsBy('item_id') };
export const hazardRelationsOfFinding = { hazards: hazardsBy('finding_id') };
