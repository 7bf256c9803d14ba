import type { UnitOfWork } from '../../db/unitOfWork.js';
import { setTaskStatus } from './setTaskStatus.js';
import type { TaskStatusInput } from './taskProgress.inputs.js';

/** A dropped task stays on record and no longer counts, neither as work left nor as done. */
export const dropTask = (work: UnitOfWork, input: TaskStatusInput): Promise<string> =>
  setTaskStatus(work, input, ({ status, title }) => {
    if (status === 'DROPPED') return `“${title}” is dropped already.`;
    if (status === 'DONE') return `“${title}” is done. Reopen it first.`;
    return { status: 'DROPPED' };
  });
