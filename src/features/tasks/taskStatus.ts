import { describedEnum } from '../../api/kit/describedEnum.js';

export const TaskStatus = describedEnum('TaskStatus', 'Where a task stands.', {
  NOT_STARTED: 'No work yet.',
  IN_PROGRESS: 'Begun and not finished.',
  DONE: 'Finished.',
  DROPPED: 'Will not be done; it no longer counts.',
});
export type TaskStatus = keyof typeof TaskStatus;
