import { checkedRecordId } from '../../api/kit/checkedRecordId.js';
import { recordId } from '../../api/kit/globalId.js';
import { Checklist } from '../../db/checklist.js';
import { insertRows } from '../../db/insertRow.js';
import { Refusal } from '../../db/refusal.js';
import { removeRow } from '../../db/removeRow.js';
import { touchRow } from '../../db/touchRow.js';
import type { UnitOfWork } from '../../db/unitOfWork.js';
import { oneProjectAtATime } from '../projects/oneProjectAtATime.js';
import { refuseTaskCycle } from './refuseTaskCycle.js';
import { TaskEntity } from './task.entity.js';
import { TaskPredecessorEntity } from './taskPredecessor.entity.js';
import type { SetPredecessorsInput } from './taskProgress.inputs.js';

export async function setPredecessors(
  work: UnitOfWork,
  input: SetPredecessorsInput,
): Promise<string> {
  const id = recordId('Task', input.id);
  const check = new Checklist(work);
  const wanted = new Set(
    input.predecessorIds.flatMap(
      (text, index) =>
        checkedRecordId(check, 'Task', text, ['predecessorIds', String(index)]) ?? [],
    ),
  );
  check.done();
  const task = await work.manager.findOneBy(TaskEntity, { id });
  if (!task) throw Refusal.notFound('task');
  await oneProjectAtATime(work, task.projectId);
  const links = await work.manager.findBy(TaskPredecessorEntity, { taskId: id });
  const kept = new Set(links.map(({ predecessorId }) => predecessorId));
  const surplus = links.filter(({ predecessorId }) => !wanted.has(predecessorId));
  const added = [...wanted].filter((predecessorId) => !kept.has(predecessorId));
  if (surplus.length + added.length === 0) return id;
  await touchRow(work, TaskEntity, id, input.version);
  for (const link of surplus) await removeRow(work, TaskPredecessorEntity, link.id);
  const edges = added.map((beforeId) => ({ beforeId, afterId: id }));
  await refuseTaskCycle(work, task.projectId, edges, ['predecessorIds']);
  await insertRows(
    work,
    TaskPredecessorEntity,
    added.map((predecessorId) => ({ taskId: id, predecessorId })),
  );
  return id;
}
