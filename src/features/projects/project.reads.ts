import { list, one } from '../../api/kit/relations.js';
import { selectColumns } from '../../api/kit/selectColumns.js';
import { tableReads } from '../../api/kit/tableReads.js';
import type { Relation } from '../../api/kit/typeReads.js';
import { standingRelationsOfProject } from '../standing/standingRelations.js';
import { taskRelationsOfProject } from '../tasks/task.reads.js';

const columns = selectColumns('project', [
  'id',
  'version',
  'itemId',
  'title',
  'targetStandard',
  'status',
  'startedOn',
  'closedAt',
  'ceilingMinorUnits',
  'ceilingCurrency',
  'ceilingMinutes',
  'decision',
  'recordedAt',
  'changedAt',
]);

export const projectReads = tableReads('Project', 'project', columns, {
  item: one('Item', 'itemId'),
  ...taskRelationsOfProject,
  ...standingRelationsOfProject,
});

/** What projects add to an item. */
export const projectRelationsOfItem: Record<string, Relation> = {
  projects: list('Project', {
    table: 'project',
    columns,
    parentColumn: 'item_id',
    orderBy: 'project.recorded_at, project.id',
  }),
};
