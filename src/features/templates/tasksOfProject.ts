import { recordId } from '../../api/kit/globalId.js';
import { queryInWork } from '../../db/queryInWork.js';
import { Refusal } from '../../db/refusal.js';
import { rowSourceInWork } from '../../db/rowSource.js';
import type { UnitOfWork } from '../../db/unitOfWork.js';
import { estimateFromHistory } from '../../domain/estimates/estimateFromHistory.js';
import { taskOrder } from '../../domain/network/taskOrder.js';
import { estimateOf } from '../tasks/estimateOf.js';
import { TaskEntity } from '../tasks/task.entity.js';
import { minutesOf } from './minutesOf.js';
import type { TemplateTask } from './templateTask.js';
import { readWorkedHours } from './workedHours.reads.js';

/** A past project as a checklist: its tasks in an order that can be worked in, dropped ones out. */
export async function tasksOfProject(
  work: UnitOfWork,
  projectGlobalId: string,
): Promise<{ projectId: string; tasks: TemplateTask[] }> {
  const path = ['projectId'];
  const projectId = recordId('Project', projectGlobalId, path);
  const kept = await work.manager.find(TaskEntity, {
    where: { projectId },
    order: { ordinal: 'ASC', id: 'ASC' },
  });
  const tasks = kept.filter(({ status }) => status !== 'DROPPED');
  if (tasks.length === 0) {
    throw Refusal.conflict('This project has no tasks to make a template of.', path);
  }
  const ids = new Set(tasks.map(({ id }) => id));
  const edges = (await edgesOf(work, projectId)).filter(
    ({ beforeId, afterId }) => ids.has(beforeId) && ids.has(afterId),
  );
  const steps = await stepsOf(work, projectId);
  const { rows, dialect } = rowSourceInWork(work);
  const hours = await readWorkedHours(rows, dialect, [...ids], Date.parse(work.now));
  const byId = new Map(tasks.map((task) => [task.id, task]));
  const order = taskOrder([...byId.keys()], edges);
  const positions = new Map(order.map((id, position) => [id, position]));
  const ordered = order.flatMap((id) => byId.get(id) ?? []);
  return {
    projectId,
    tasks: ordered.map((task) => ({
      title: task.title,
      kind: task.kind,
      ...minutesOf(
        estimateFromHistory(
          estimateOf(task),
          task.status === 'DONE' ? workedOf(hours.get(task.id)) : [],
        ),
      ),
      rule: task.earningRule,
      steps: steps.flatMap(({ taskId, title, weight }) =>
        taskId === task.id ? [{ title, weight }] : [],
      ),
      predecessorPositions: edges.flatMap(({ beforeId, afterId }) =>
        afterId === task.id ? (positions.get(beforeId) ?? []) : [],
      ),
      hazardKinds: task.hazardKinds,
      note: null,
    })),
  };
}

const workedOf = (hours: number | undefined): number[] => (hours ? [hours] : []);

const edgesOf = (work: UnitOfWork, projectId: string) =>
  queryInWork<{ beforeId: string; afterId: string }>(
    work,
    `SELECT task_predecessor.predecessor_id AS "beforeId", task_predecessor.task_id AS "afterId"
     FROM task_predecessor JOIN task ON task.id = task_predecessor.task_id
     WHERE task.project_id = ? ORDER BY task_predecessor.id`,
    [projectId],
  );

const stepsOf = (work: UnitOfWork, projectId: string) =>
  queryInWork<{ taskId: string; title: string; weight: number }>(
    work,
    `SELECT task_step.task_id AS "taskId", task_step.title AS "title", task_step.weight AS "weight"
     FROM task_step JOIN task ON task.id = task_step.task_id
     WHERE task.project_id = ? ORDER BY task_step.ordinal, task_step.id`,
    [projectId],
  );
