import { Checklist } from '../../db/checklist.js';
import { rowSourceInWork } from '../../db/rowSource.js';
import type { UnitOfWork } from '../../db/unitOfWork.js';
import { estimateFromHistory } from '../../domain/estimates/estimateFromHistory.js';
import { addTasks } from '../tasks/addTasks.js';
import { estimateOf } from '../tasks/estimateOf.js';
import type { ApplyTaskTemplateInput } from './taskTemplate.inputs.js';
import { readTaskHistory, taskHistoryKey } from './taskHistory.reads.js';
import { tasksOfTemplate } from './tasksOfTemplate.js';
import { chosenTasks } from './chosenTasks.js';

/**
 * Adds a template's tasks to a project. Where the collector has finished tasks of the same title
 * and kind, their hours take the place of the template's.
 * @returns the ids of the new tasks
 */
export async function applyTaskTemplate(
  work: UnitOfWork,
  { templateId, projectId, positions, usesHistory }: ApplyTaskTemplateInput,
): Promise<string[]> {
  const template = await tasksOfTemplate(work, templateId);
  const check = new Checklist(work);
  const wanted = positions ?? template.map((_task, position) => position);
  wanted.forEach((position, index) => {
    check.that(
      template[position] !== undefined,
      `There is no position ${position}: the template goes from 0 to ${template.length - 1}.`,
      ['positions', String(index)],
    );
  });
  check.that(wanted.length > 0, 'Choose at least one task.', ['positions']);
  check.done();
  const tasks = chosenTasks(template, wanted);
  const { rows, dialect } = rowSourceInWork(work);
  const history = usesHistory
    ? await readTaskHistory(rows, dialect, tasks, Date.parse(work.now))
    : new Map<string, number[]>();
  return addTasks(work, {
    projectId,
    tasks: tasks.map((task) => ({
      title: task.title,
      kind: task.kind,
      estimate: estimateFromHistory(estimateOf(task), history.get(taskHistoryKey(task)) ?? []),
      rule: task.rule,
      steps: task.steps,
      predecessorPositions: task.predecessorPositions,
      hazardKinds: task.hazardKinds,
      note: task.note,
    })),
  });
}
