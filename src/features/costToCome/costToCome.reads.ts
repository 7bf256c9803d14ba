import { list, one } from '../../api/kit/relations.js';
import { selectColumns } from '../../api/kit/selectColumns.js';
import { tableReads } from '../../api/kit/tableReads.js';
import type { Relation } from '../../api/kit/typeReads.js';
import { reckonProjects } from './reckonProjects.js';
import { shownCostToCome } from './shownCostToCome.js';

const columns = selectColumns('planned_cost', [
  'id',
  'version',
  'projectId',
  'kind',
  'description',
  'optimisticMinorUnits',
  'likelyMinorUnits',
  'pessimisticMinorUnits',
  'currency',
  'neededFrom',
  'settledAt',
  'note',
]);

export const plannedCostReads = tableReads('PlannedCost', 'planned_cost', columns, {
  project: one('Project', 'projectId'),
});

const costToCome: Relation = async (context, projects) => {
  const ids = projects.map(({ id }) => id);
  const reckoned = await reckonProjects(context, ids);
  const byId = new Map(reckoned.map((one) => [one.project.id, one]));
  const values = ids.map((id) => {
    const own = byId.get(id);
    return own ? shownCostToCome(own, context.nowMs) : null;
  });
  return { values, children: [], childType: null };
};

/** What money to come adds to a project. */
export const costToComeRelationsOfProject: Record<string, Relation> = {
  costToCome,
  plannedCosts: list('PlannedCost', {
    table: 'planned_cost',
    columns,
    parentColumn: 'project_id',
    orderBy: 'planned_cost.recorded_at, planned_cost.id',
  }),
};
