import { computedReads } from '../../api/kit/computedReads.js';
import { one } from '../../api/kit/relations.js';
import type { Relation } from '../../api/kit/typeReads.js';
import { listParameter } from '../../db/dialect.js';
import { readPlans } from './plans.reads.js';

const plan: Relation = async ({ database: { reader } }, parents) => {
  const ids = parents.map(({ id }) => id);
  const plans = await readPlans(reader, ids);
  const versions = await reader.rows<{ projectId: string; version: number }>(
    `SELECT project_id AS "projectId", version AS "version" FROM project_plan
     WHERE ${reader.dialect.isAnyOf('project_id')}`,
    [listParameter(ids)],
  );
  const versionOf = new Map(versions.map(({ projectId, version }) => [projectId, version]));
  const rows = new Map(
    plans.map(({ id, priority, personId, correlationPercent, seed }) => [
      id,
      {
        id,
        version: versionOf.get(id) ?? 0,
        priority,
        personId,
        correlation: correlationPercent / 100,
        seed,
      },
    ]),
  );
  const values = ids.map((id) => rows.get(id) ?? null);
  return { values, children: [...rows.values()], childType: 'ProjectPlan' };
};

/** What plans add to a project. */
export const planRelationsOfProject: Record<string, Relation> = { plan };

export const projectPlanReads = computedReads('ProjectPlan', {
  workedBy: one('Party', 'personId'),
});
