import { checkedRecordId } from '../../api/kit/checkedRecordId.js';
import { changeRow } from '../../db/changeRow.js';
import { Checklist } from '../../db/checklist.js';
import { insertRow } from '../../db/insertRow.js';
import { removeRow } from '../../db/removeRow.js';
import type { UnitOfWork } from '../../db/unitOfWork.js';
import type { TaskStepInput } from './task.inputs.js';
import { TaskStepEntity } from './taskStep.entity.js';

/**
 * Makes a task's steps those given, in their order; steps with an id keep what was marked.
 * @returns whether anything changed.
 * @throws Refusal for a step of another task, and where a done step would be lost.
 */
export async function replaceSteps(
  work: UnitOfWork,
  taskId: string,
  kept: readonly TaskStepEntity[],
  inputs: readonly TaskStepInput[],
): Promise<boolean> {
  const check = new Checklist(work);
  const byId = new Map(kept.map((step) => [step.id, step]));
  const ids = inputs.map(({ id }, index) => {
    if (id === null || id === undefined) return null;
    const path = ['steps', String(index), 'id'];
    const known = checkedRecordId(check, 'TaskStep', id, path);
    check.that(known === null || byId.has(known), 'This is no step of the task.', path);
    return known;
  });
  const given = ids.filter((id) => id !== null);
  check.that(new Set(given).size === given.length, 'A step is named twice.', ['steps']);
  const surplus = kept.filter(({ id }) => !ids.includes(id));
  for (const { title, doneAt } of surplus) {
    check.that(
      doneAt === null,
      `The step “${title}” is done: name it too, or mark it as not done first.`,
      ['steps'],
    );
  }
  check.done();
  const before = work.writes.length;
  for (const { id } of surplus) await removeRow(work, TaskStepEntity, id);
  for (const [index, { title, weight }] of inputs.entries()) {
    const step = { ordinal: index + 1, title: title.trim(), weight };
    const id = ids[index];
    if (id) await changeRow(work, TaskStepEntity, id, null, step);
    else await insertRow(work, TaskStepEntity, { taskId, ...step, doneAt: null });
  }
  return work.writes.length > before;
}
