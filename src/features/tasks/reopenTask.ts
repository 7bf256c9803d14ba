import type { UnitOfWork } from '../../db/unitOfWork.js';
import { setTaskStatus } from './setTaskStatus.js';
import type { TaskStatusInput } from './taskProgress.inputs.js';

/** A done or dropped task goes back to where it was: begun if it ever was, else not started. */
export const reopenTask = (work: UnitOfWork, input: TaskStatusInput): Promise<string> =>
  setTaskStatus(work, input, ({ status, title, startedAt }) => {
    if (status !== 'DONE' && status !== 'DROPPED') return `“${title}” is open already.`;
    return { status: startedAt === null ? 'NOT_STARTED' : 'IN_PROGRESS', finishedAt: null };
  });
