import type { UnitOfWork } from '../../db/unitOfWork.js';
import { setTaskStatus } from './setTaskStatus.js';
import type { TaskStatusInput } from './taskProgress.inputs.js';

/** A finished task has earned all its hours, whatever steps were marked. */
export const finishTask = (work: UnitOfWork, input: TaskStatusInput): Promise<string> =>
  setTaskStatus(work, input, ({ status, title, startedAt }) => {
    if (status === 'DONE') return `“${title}” is done already.`;
    if (status === 'DROPPED') return `“${title}” is dropped. Reopen it first.`;
    return { status: 'DONE', startedAt: startedAt ?? work.now, finishedAt: work.now };
  });
