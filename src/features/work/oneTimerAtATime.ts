import { oneAtATime } from '../../db/oneAtATime.js';
import type { UnitOfWork } from '../../db/unitOfWork.js';

/** For the rules about a person's timer and its breaks. */
export const oneTimerAtATime = (work: UnitOfWork, personId: string): Promise<void> =>
  oneAtATime(work, `timer of ${personId}`);
