import type { UnitOfWork } from '../../db/unitOfWork.js';
import { setTaskStatus } from './setTaskStatus.js';
import type { TaskStatusInput } from './taskProgress.inputs.js';

/** A task may be begun before its predecessors are done: that is then what happened. */
export const startTask = (work: UnitOfWork, input: TaskStatusInput): Promise<string> =>
  setTaskStatus(work, input, ({ status, title, startedAt }) => {
    if (status === 'IN_PROGRESS') return `“${title}” is in progress already.`;
    if (status !== 'NOT_STARTED') return `“${title}” is ${status.toLowerCase()}. Reopen it first.`;
    return { status: 'IN_PROGRESS', startedAt: startedAt ?? work.now };
  });
