import { childPages } from '../../api/kit/childPages.js';
import { list, one } from '../../api/kit/relations.js';
import { selectColumns } from '../../api/kit/selectColumns.js';
import { tableReads } from '../../api/kit/tableReads.js';
import { findingRelationsOfInspection } from '../findings/finding.reads.js';

const columns = selectColumns('inspection', [
  'id',
  'version',
  'itemId',
  'inspectedAt',
  'inspectorId',
  'note',
]);
const checkColumns = selectColumns('fit_out_check', [
  'id',
  'version',
  'inspectionId',
  'itemId',
  'positionId',
  'state',
  'checkedAt',
  'note',
]);

export const inspectionReads = tableReads('Inspection', 'inspection', columns, {
  item: one('Item', 'itemId'),
  inspector: one('Party', 'inspectorId'),
  ...findingRelationsOfInspection,
  fitOutChecks: list('FitOutCheck', {
    table: 'fit_out_check',
    columns: checkColumns,
    parentColumn: 'inspection_id',
    orderBy: 'fit_out_check.id',
  }),
});

export const fitOutCheckReads = tableReads('FitOutCheck', 'fit_out_check', checkColumns, {
  position: one('FitOutPosition', 'positionId'),
  inspection: one('Inspection', 'inspectionId'),
});

export const inspectionRelationsOfItem = {
  inspections: childPages('Inspection', {
    table: 'inspection',
    columns,
    parentColumn: 'item_id',
    sortColumn: 'inspected_at',
    sortName: 'inspectedAt',
    direction: 'DESC',
  }),
};
