import { list, one } from '../../api/kit/relations.js';
import { spareColumns } from '../../api/kit/spareColumns.js';
import { tableReads } from '../../api/kit/tableReads.js';
import type { Relation, Row } from '../../api/kit/typeReads.js';
import { baselineRelationsOfProject } from '../baselines/baseline.reads.js';
import { earnedValueRelationsOfProject } from '../earnedValue/earnedValue.reads.js';
import { costToComeRelationsOfProject } from '../costToCome/costToCome.reads.js';
import { goingOnRelationsOfProject } from '../goingOn/goingOn.reads.js';
import { forecastRelationsOfProject } from '../forecast/projectForecast.reads.js';
import { planRelationsOfProject } from '../forecast/projectPlan.reads.js';
import { fittedSpareRelationsOfProject } from '../stock/fittedSpares.reads.js';
import { standByItem, standingRelationsOfProject } from '../standing/standingRelations.js';
import { taskRelationsOfProject } from '../tasks/task.reads.js';

const names = [
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
];
const columns = spareColumns('project', names, {
  version: [],
  targetStandard: [],
  startedOn: [],
  closedAt: [],
  decision: [],
  recordedAt: [],
  changedAt: [],
});

export const projectReads = tableReads('Project', 'project', columns, {
  item: one('Item', 'itemId'),
  ...taskRelationsOfProject,
  ...standingRelationsOfProject,
  ...fittedSpareRelationsOfProject,
  ...forecastRelationsOfProject,
  ...costToComeRelationsOfProject,
  ...goingOnRelationsOfProject,
  ...planRelationsOfProject,
  ...baselineRelationsOfProject,
  ...earnedValueRelationsOfProject,
});

const ofItem = list('Project', {
  table: 'project',
  columns,
  parentColumn: 'item_id',
  orderBy: 'project.recorded_at, project.id',
});

const projects: Relation = async (context, items, ...rest) => {
  const { values, ...children } = await ofItem(context, items, ...rest);
  items.forEach((item, index) => {
    standByItem(values[index] as Row[], item);
  });
  return { values, ...children };
};

/** What projects add to an item. */
export const projectRelationsOfItem: Record<string, Relation> = { projects };
