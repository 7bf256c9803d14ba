import { describedEnum } from '../../api/kit/describedEnum.js';

export const ProjectStatus = describedEnum('ProjectStatus', 'Where a restoration stands.', {
  PLANNED: 'Not begun.',
  ACTIVE: 'Being worked on.',
  DEFERRED: 'Put off until something changes.',
  COMPLETED: 'Finished.',
  ABANDONED: 'Given up; the record stays.',
});
export type ProjectStatus = keyof typeof ProjectStatus;
