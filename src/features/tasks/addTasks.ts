import { v7 as uuidv7 } from 'uuid';
import { checkedRecordId } from '../../api/kit/checkedRecordId.js';
import { recordId } from '../../api/kit/globalId.js';
import { Checklist } from '../../db/checklist.js';
import { insertRows } from '../../db/insertRow.js';
import { queryInWork } from '../../db/queryInWork.js';
import type { UnitOfWork } from '../../db/unitOfWork.js';
import type { TaskEdge } from '../../domain/network/taskEdge.js';
import { oneProjectAtATime } from '../projects/oneProjectAtATime.js';
import { openProjectFor } from '../projects/openProjectFor.js';
import { readEstimate } from './readEstimate.js';
import { readSteps } from './readSteps.js';
import { refuseTaskCycle } from './refuseTaskCycle.js';
import type { AddTasksInput, NewTaskInput } from './task.inputs.js';
import { TaskEntity } from './task.entity.js';
import { TaskPredecessorEntity } from './taskPredecessor.entity.js';
import { TaskStepEntity } from './taskStep.entity.js';

const mostTasks = 500;

/**
 * Adds tasks at the end of a project's list, with their steps and what they wait for.
 * @param pathOf where in the input the task at a position is.
 * @returns their ids, in the order given.
 */
export async function addTasks(
  work: UnitOfWork,
  input: AddTasksInput,
  pathOf = (position: number) => ['tasks', String(position)],
): Promise<string[]> {
  const projectId = recordId('Project', input.projectId, ['projectId']);
  await oneProjectAtATime(work, projectId);
  await openProjectFor(work, projectId, ['projectId']);
  const check = new Checklist(work);
  const count = input.tasks.length;
  check.that(count > 0 && count <= mostTasks, `Give 1 to ${mostTasks} tasks.`, ['tasks']);
  const ids = input.tasks.map(() => uuidv7());
  const last = await lastOrdinal(work, projectId);
  const tasks = input.tasks.map((task, position) => ({
    id: ids[position] as string,
    projectId,
    ordinal: last + position + 1,
    ...readTask(check, task, pathOf(position)),
  }));
  const steps = input.tasks.flatMap((task, position) =>
    readSteps(check, task.rule, task.steps ?? [], pathOf(position)).map((step, index) => ({
      taskId: ids[position] as string,
      ordinal: index + 1,
      ...step,
      doneAt: null,
    })),
  );
  const edges = input.tasks.flatMap((task, position) =>
    edgesOf(check, task, ids, position, pathOf(position)),
  );
  check.done();
  await insertRows(work, TaskEntity, tasks);
  await insertRows(work, TaskStepEntity, steps);
  await refuseTaskCycle(work, projectId, edges, pathOf(0).slice(0, 1));
  await insertRows(
    work,
    TaskPredecessorEntity,
    edges.map(({ beforeId, afterId }) => ({ taskId: afterId, predecessorId: beforeId })),
  );
  return ids;
}

const readTask = (check: Checklist, task: NewTaskInput, path: string[]) => ({
  title: check.words(task.title, [...path, 'title']),
  kind: task.kind,
  status: 'NOT_STARTED' as const,
  estimateDistribution: 'PERT_BETA' as const,
  ...readEstimate(check, task.estimate, [...path, 'estimate']),
  earningRule: task.rule,
  percentComplete: null,
  percentEvidence: null,
  percentEvidenceKind: null,
  percentEvidenceReadingId: null,
  percentEvidenceAttachmentId: null,
  hazardKinds: [...new Set(task.hazardKinds ?? [])],
  startedAt: null,
  finishedAt: null,
  note: check.text(task.note, [...path, 'note']),
});

/** What a new task waits for, by id or by position in the list, each once. */
function edgesOf(
  check: Checklist,
  task: NewTaskInput,
  ids: readonly string[],
  position: number,
  path: string[],
): TaskEdge[] {
  const before = new Set<string>();
  (task.predecessorPositions ?? []).forEach((other, index) => {
    const id = ids[other];
    const at = [...path, 'predecessorPositions', String(index)];
    if (id !== undefined) before.add(id);
    else
      check.refuse(`There is no position ${other}: the list goes from 0 to ${ids.length - 1}.`, at);
  });
  (task.predecessorIds ?? []).forEach((other, index) => {
    const id = checkedRecordId(check, 'Task', other, [...path, 'predecessorIds', String(index)]);
    if (id !== null) before.add(id);
  });
  return [...before].map((beforeId) => ({ beforeId, afterId: ids[position] as string }));
}

async function lastOrdinal(work: UnitOfWork, projectId: string): Promise<number> {
  const [row] = await queryInWork<{ last: number | null }>(
    work,
    `SELECT MAX(ordinal) AS "last" FROM task WHERE project_id = ?`,
    [projectId],
  );
  return row?.last ?? 0;
}
