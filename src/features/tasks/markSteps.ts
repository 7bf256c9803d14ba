import { checkedRecordId } from '../../api/kit/checkedRecordId.js';
import { changeRow } from '../../db/changeRow.js';
import { Checklist } from '../../db/checklist.js';
import type { UnitOfWork } from '../../db/unitOfWork.js';
import { setTaskStatus } from './setTaskStatus.js';
import type { MarkStepsInput } from './taskProgress.inputs.js';
import { TaskStepEntity } from './taskStep.entity.js';

/** Marking a first step begins the task; unmarking leaves its status as it is. */
export async function markSteps(work: UnitOfWork, input: MarkStepsInput): Promise<string> {
  const id = await setTaskStatus(work, { id: input.taskId }, ({ status, title, startedAt }) => {
    if (status === 'DONE' || status === 'DROPPED') {
      return `“${title}” is ${status.toLowerCase()}. Reopen it first.`;
    }
    const begins = status === 'NOT_STARTED' && input.steps.some(({ isDone }) => isDone);
    return begins ? { status: 'IN_PROGRESS', startedAt: startedAt ?? work.now } : {};
  });
  const check = new Checklist(work);
  const steps = await work.manager.findBy(TaskStepEntity, { taskId: id });
  const marks = input.steps.map(({ stepId, isDone }, index) => {
    const path = ['steps', String(index), 'stepId'];
    const known = checkedRecordId(check, 'TaskStep', stepId, path);
    const step = steps.find((candidate) => candidate.id === known);
    check.that(known === null || step !== undefined, 'This is no step of the task.', path);
    return { step, isDone };
  });
  check.done();
  for (const { step, isDone } of marks) {
    if (!step || (step.doneAt !== null) === isDone) continue;
    await changeRow(work, TaskStepEntity, step.id, null, { doneAt: isDone ? work.now : null });
  }
  return id;
}
