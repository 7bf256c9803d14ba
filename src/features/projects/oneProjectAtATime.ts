import { oneAtATime } from '../../db/oneAtATime.js';
import type { UnitOfWork } from '../../db/unitOfWork.js';

/** For rules over all tasks of a project: the order of tasks, no circle, closed or not. */
export const oneProjectAtATime = (work: UnitOfWork, projectId: string): Promise<void> =>
  oneAtATime(work, `project ${projectId}`);
