import { groupedBy } from '../../db/groupedBy.js';
import { listParameter } from '../../db/dialect.js';
import type { RowSource } from '../../db/rowSource.js';
import { remainingHours } from '../../domain/estimates/remainingHours.js';
import type { OpenTask } from '../../domain/readiness/mendingHours.js';
import { estimateOf } from '../tasks/estimateOf.js';
import type { TaskKind } from '../tasks/taskKind.js';
import type { TaskStatus } from '../tasks/taskStatus.js';

export interface OpenTaskOfItem extends OpenTask {
  readonly itemId: string;
  readonly title: string;
}

/** The open tasks of some items with what is expected to be left of each; none, no entry. */
export async function readOpenTasks(
  { rows, dialect }: RowSource,
  itemIds: readonly string[],
): Promise<Map<string, OpenTaskOfItem[]>> {
  const tasks = await rows<TaskRow>(
    `SELECT task.id AS "taskId", project.item_id AS "itemId", task.title AS "title",
       task.kind AS "kind", task.status AS "state", task.optimistic_minutes AS "optimisticMinutes",
       task.likely_minutes AS "likelyMinutes", task.pessimistic_minutes AS "pessimisticMinutes"
     FROM task JOIN project ON project.id = task.project_id
     WHERE ${dialect.isAnyOf('project.item_id')} AND project.status <> 'ABANDONED'
       AND task.status NOT IN ('DONE', 'DROPPED')
     ORDER BY project.id, task.ordinal, task.id`,
    [listParameter(itemIds)],
  );
  const sessions = await rows<{ taskId: string; startedAt: string; endedAt: string }>(
    `SELECT task_id AS "taskId", started_at AS "startedAt", ended_at AS "endedAt"
     FROM work_session WHERE ended_at IS NOT NULL AND ${dialect.isAnyOf('task_id')}`,
    [listParameter(tasks.map(({ taskId }) => taskId))],
  );
  const spent = groupedBy(sessions, ({ taskId }) => taskId);
  const open = tasks.map(({ taskId, itemId, title, kind, state, ...minutes }) => {
    const estimate = estimateOf(minutes);
    const spentHours = (spent.get(taskId) ?? []).reduce(
      (sum, { startedAt, endedAt }) =>
        sum + (Date.parse(endedAt) - Date.parse(startedAt)) / 3_600_000,
      0,
    );
    const { meanHours } = remainingHours({ state, estimate, spentHours });
    return { taskId, itemId, title, kind, expectedHours: meanHours };
  });
  return groupedBy(open, ({ itemId }) => itemId);
}

interface TaskRow {
  taskId: string;
  itemId: string;
  title: string;
  kind: TaskKind;
  state: TaskStatus;
  optimisticMinutes: number;
  likelyMinutes: number;
  pessimisticMinutes: number;
}
