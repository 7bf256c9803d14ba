import { list, one } from '../../api/kit/relations.js';
import { selectColumns } from '../../api/kit/selectColumns.js';
import { tableReads } from '../../api/kit/tableReads.js';

const columns = selectColumns('maintenance_done', [
  'id',
  'version',
  'ruleId',
  'doneAt',
  'doneById',
  'withdrawnAt',
  'note',
]);

export const maintenanceDoneReads = tableReads('MaintenanceDone', 'maintenance_done', columns, {
  doneBy: one('Party', 'doneById'),
});

/** What a rule shows of how often it was followed; taken back ones too, to be seen as such. */
export const doneOfRule = list('MaintenanceDone', {
  table: 'maintenance_done',
  columns,
  parentColumn: 'rule_id',
  orderBy: 'maintenance_done.done_at DESC, maintenance_done.id',
});
