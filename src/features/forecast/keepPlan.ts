import { changeRow, type RowChanges } from '../../db/changeRow.js';
import { insertRow } from '../../db/insertRow.js';
import { Refusal } from '../../db/refusal.js';
import type { UnitOfWork } from '../../db/unitOfWork.js';
import { usualCorrelationPercent } from './plans.reads.js';
import { ProjectPlanEntity } from './projectPlan.entity.js';

/**
 * Changes the plan of a project, which is written the first time that anything is said. The caller
 * holds the project.
 * @param expectedVersion the version the person saw, 0 for none; null where the rule alone decides.
 */
export async function keepPlan(
  work: UnitOfWork,
  projectId: string,
  expectedVersion: number | null,
  changes: RowChanges<ProjectPlanEntity>,
): Promise<void> {
  const known = await work.manager.findOneBy(ProjectPlanEntity, { projectId });
  if (known) {
    await changeRow(work, ProjectPlanEntity, known.id, expectedVersion, changes);
    return;
  }
  if (expectedVersion !== null && expectedVersion !== 0) throw Refusal.stale(0, expectedVersion);
  await insertRow(work, ProjectPlanEntity, {
    projectId,
    priority: null,
    workedById: null,
    correlationPercent: usualCorrelationPercent,
    seed: null,
    ...changes,
  });
}
