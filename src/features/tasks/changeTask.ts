import { recordId } from '../../api/kit/globalId.js';
import { changeRow } from '../../db/changeRow.js';
import { Checklist } from '../../db/checklist.js';
import { Refusal } from '../../db/refusal.js';
import { touchRow } from '../../db/touchRow.js';
import type { UnitOfWork } from '../../db/unitOfWork.js';
import { readEstimate } from './readEstimate.js';
import { readSteps } from './readSteps.js';
import { replaceSteps } from './replaceSteps.js';
import { TaskEntity } from './task.entity.js';
import type { ChangeTaskInput } from './task.inputs.js';
import { TaskStepEntity } from './taskStep.entity.js';

export async function changeTask(work: UnitOfWork, input: ChangeTaskInput): Promise<string> {
  const id = recordId('Task', input.id);
  const task = await work.manager.findOneBy(TaskEntity, { id });
  if (!task) throw Refusal.notFound('task');
  const { title, kind, ordinal, estimate, rule, hazardKinds, note } = input;
  const check = new Checklist(work);
  if (typeof ordinal === 'number') {
    check.that(ordinal > 0, 'Places in the list count from 1.', ['ordinal']);
  }
  const changes = {
    ...(typeof title === 'string' && { title: check.words(title, ['title']) }),
    ...(kind && { kind }),
    ...(typeof ordinal === 'number' && { ordinal }),
    ...(estimate && readEstimate(check, estimate, ['estimate'])),
    ...(rule && { earningRule: rule }),
    ...(hazardKinds && { hazardKinds: [...new Set(hazardKinds)] }),
    ...(note !== undefined && { note: check.text(note, ['note']) }),
  };
  const kept = await work.manager.find(TaskStepEntity, {
    where: { taskId: id },
    order: { ordinal: 'ASC', id: 'ASC' },
  });
  readSteps(check, rule ?? task.earningRule, input.steps ?? kept, []);
  check.done();
  const after = await changeRow(work, TaskEntity, id, input.version, changes);
  if (!input.steps) return id;
  const isChanged = await replaceSteps(work, id, kept, input.steps);
  if (isChanged && after.version === input.version) {
    await touchRow(work, TaskEntity, id, input.version);
  }
  return id;
}
