import { queryInWork } from '../../db/queryInWork.js';
import { Refusal } from '../../db/refusal.js';
import type { UnitOfWork } from '../../db/unitOfWork.js';
import { findCycle } from '../../domain/network/findCycle.js';
import type { TaskEdge } from '../../domain/network/taskEdge.js';

/**
 * Tasks wait only for tasks of their own project, and never for one another in a circle.
 * @param added edges that are not written yet.
 * @throws Refusal NOT_FOUND for a task of another project; CONFLICT that names the circle by titles.
 */
export async function refuseTaskCycle(
  work: UnitOfWork,
  projectId: string,
  added: readonly TaskEdge[],
  path: string[],
): Promise<void> {
  if (added.length === 0) return;
  const tasks = await queryInWork<{ id: string; title: string }>(
    work,
    `SELECT id AS "id", title AS "title" FROM task WHERE project_id = ?`,
    [projectId],
  );
  const titles = new Map(tasks.map(({ id, title }) => [id, title]));
  if (added.some(({ beforeId }) => !titles.has(beforeId))) {
    const message =
      'A task named as a predecessor is not in this project. Name tasks of the same project.';
    throw new Refusal([{ code: 'NOT_FOUND', message, path }]);
  }
  const known = await queryInWork<TaskEdge>(
    work,
    `SELECT link.predecessor_id AS "beforeId", link.task_id AS "afterId"
     FROM task_predecessor AS link JOIN task ON task.id = link.task_id WHERE task.project_id = ?`,
    [projectId],
  );
  const cycle = findCycle([...known, ...added]);
  if (!cycle) return;
  const [first] = cycle;
  const names = [...cycle, first as string].map((id) => `“${titles.get(id) ?? id}”`);
  throw Refusal.conflict(
    `These tasks would wait for one another: ${names.join(' before ')}. Leave one of them out.`,
    path,
  );
}
