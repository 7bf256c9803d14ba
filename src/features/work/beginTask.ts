import { DateTime } from 'luxon';
import { changeRow } from '../../db/changeRow.js';
import type { UnitOfWork } from '../../db/unitOfWork.js';
import { ProjectEntity } from '../projects/project.entity.js';
import { TaskEntity } from '../tasks/task.entity.js';
import type { WorkedOn } from './whatIsWorkedOn.js';

/** Time given to a task means that it, and its project, have begun. */
export async function beginTask(
  work: UnitOfWork,
  { task, project }: WorkedOn,
  { startedAt, zone }: { startedAt: string; zone: string },
): Promise<void> {
  if (task?.status === 'NOT_STARTED') {
    const begun = { status: 'IN_PROGRESS' as const, startedAt: task.startedAt ?? startedAt };
    await changeRow(work, TaskEntity, task.id, null, begun);
  }
  if (project?.status === 'PLANNED') {
    const localDay = DateTime.fromISO(startedAt, { zone }).toFormat('yyyy-MM-dd');
    const begun = { status: 'ACTIVE' as const, startedOn: project.startedOn ?? localDay };
    await changeRow(work, ProjectEntity, project.id, null, begun);
  }
}
