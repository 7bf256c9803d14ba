import type { TaskState } from '../taskState.js';
import type { TaskEdge } from './taskEdge.js';

export interface TaskInNetwork {
  readonly id: string;
  readonly state: TaskState;
}

/**
 * The open tasks that can be worked on now: everything before them is done or dropped. They keep
 * the order given; a task before them that is not listed holds nothing up.
 */
export function readyTasks<Task extends TaskInNetwork>(
  tasks: readonly Task[],
  edges: readonly TaskEdge[],
): Task[] {
  const openIds = new Set(tasks.filter(isOpen).map(({ id }) => id));
  const heldUp = new Set(
    edges.filter(({ beforeId }) => openIds.has(beforeId)).map(({ afterId }) => afterId),
  );
  return tasks.filter((task) => isOpen(task) && !heldUp.has(task.id));
}

function isOpen({ state }: TaskInNetwork): boolean {
  return state !== 'DONE' && state !== 'DROPPED';
}
