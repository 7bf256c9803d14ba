import { recordId } from '../../api/kit/globalId.js';
import { changeRow } from '../../db/changeRow.js';
import { Checklist } from '../../db/checklist.js';
import { queryInWork } from '../../db/queryInWork.js';
import { Refusal } from '../../db/refusal.js';
import type { UnitOfWork } from '../../db/unitOfWork.js';
import { ProjectEntity } from './project.entity.js';
import type { SetProjectStatusInput } from './project.inputs.js';
import { releaseReservations } from '../stock/releaseReservations.js';
import { isClosed } from './isClosed.js';
import { oneProjectAtATime } from './oneProjectAtATime.js';

const mostNamed = 5;

/** A project may be given up at any time; it is completed only when no task is left open. */
export async function setProjectStatus(
  work: UnitOfWork,
  input: SetProjectStatusInput,
): Promise<string> {
  const id = recordId('Project', input.id);
  const check = new Checklist(work);
  const decision =
    input.decision === undefined ? undefined : check.text(input.decision, ['decision']);
  check.done();
  await oneProjectAtATime(work, id);
  if (input.status === 'COMPLETED') await refuseOpenTasks(work, id);
  await changeRow(work, ProjectEntity, id, input.version, {
    status: input.status,
    closedAt: isClosed(input.status) ? work.now : null,
    ...(decision !== undefined && { decision }),
  });
  if (isClosed(input.status)) await releaseReservations(work, { projectId: id });
  return id;
}

async function refuseOpenTasks(work: UnitOfWork, projectId: string): Promise<void> {
  const open = await queryInWork<{ title: string }>(
    work,
    `SELECT title AS "title" FROM task
     WHERE project_id = ? AND status NOT IN ('DONE', 'DROPPED') ORDER BY ordinal, id`,
    [projectId],
  );
  if (open.length === 0) return;
  const named = open.slice(0, mostNamed).map(({ title }) => `“${title}”`);
  const more = open.length > mostNamed ? [`${open.length - mostNamed} more`] : [];
  throw Refusal.conflict(
    `Tasks are still open: ${[...named, ...more].join(', ')}. Finish or drop them first.`,
    ['status'],
  );
}
