import { recordId } from '../../api/kit/globalId.js';
import { changeRow, type RowChanges } from '../../db/changeRow.js';
import { Checklist } from '../../db/checklist.js';
import { Refusal } from '../../db/refusal.js';
import type { UnitOfWork } from '../../db/unitOfWork.js';
import { oneProjectAtATime } from '../projects/oneProjectAtATime.js';
import { openProjectFor } from '../projects/openProjectFor.js';
import { releaseReservations } from '../stock/releaseReservations.js';
import { TaskEntity } from './task.entity.js';
import type { TaskStatusInput } from './taskProgress.inputs.js';

/**
 * Moves a task on, by a rule that sees the task as it is now.
 * @param decide the changes, or a sentence that says why not.
 */
export async function setTaskStatus(
  work: UnitOfWork,
  input: TaskStatusInput,
  decide: (task: TaskEntity) => RowChanges<TaskEntity> | string,
): Promise<string> {
  const id = recordId('Task', input.id);
  const check = new Checklist(work);
  const note = check.text(input.note, ['note']);
  check.done();
  const found = await work.manager.findOneBy(TaskEntity, { id });
  if (!found) throw Refusal.notFound('task');
  await oneProjectAtATime(work, found.projectId);
  await openProjectFor(work, found.projectId, ['id']);
  const task = await work.manager.findOneByOrFail(TaskEntity, { id });
  const changes = decide(task);
  if (typeof changes === 'string') throw Refusal.conflict(changes, ['id']);
  const remarks = [task.note, note].filter((text) => text !== null);
  await changeRow(work, TaskEntity, id, null, {
    ...changes,
    ...(note !== null && { note: remarks.join('\n') }),
  });
  if (changes.status === 'DONE' || changes.status === 'DROPPED') {
    await releaseReservations(work, { taskId: id });
  }
  return id;
}
