import { list, one } from '../../api/kit/relations.js';
import { selectColumns } from '../../api/kit/selectColumns.js';
import { tableReads } from '../../api/kit/tableReads.js';
import type { Relation } from '../../api/kit/typeReads.js';

const columns = selectColumns('baseline', [
  'id',
  'version',
  'projectId',
  'keptAt',
  'startsOn',
  'minutesPerWeek',
  'budgetMinorUnits',
  'budgetCurrency',
  'note',
]);
const taskColumns = selectColumns('baseline_task', [
  'id',
  'baselineId',
  'taskId',
  'ordinal',
  'budgetMinutes',
  'plannedStartOn',
  'plannedFinishOn',
]);

export const baselineReads = tableReads('Baseline', 'baseline', columns, {
  project: one('Project', 'projectId'),
  tasks: list('BaselineTask', {
    table: 'baseline_task',
    columns: taskColumns,
    parentColumn: 'baseline_id',
    orderBy: 'baseline_task.ordinal, baseline_task.id',
  }),
});

export const baselineTaskReads = tableReads('BaselineTask', 'baseline_task', taskColumns, {
  task: one('Task', 'taskId'),
});

/** What kept plans add to a project. */
export const baselineRelationsOfProject: Record<string, Relation> = {
  baselines: list('Baseline', {
    table: 'baseline',
    columns,
    parentColumn: 'project_id',
    orderBy: 'baseline.kept_at DESC, baseline.id DESC',
  }),
};
