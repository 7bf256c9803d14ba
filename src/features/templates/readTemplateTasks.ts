import type { Checklist } from '../../db/checklist.js';
import { readEstimate } from '../tasks/readEstimate.js';
import { readSteps } from '../tasks/readSteps.js';
import type { TemplateTaskInput } from './taskTemplate.inputs.js';
import type { TemplateTask } from './templateTask.js';

const mostTasks = 200;

/** Tasks of a template as a person gave them; what is wrong goes to the checklist. */
export function readTemplateTasks(
  check: Checklist,
  inputs: readonly TemplateTaskInput[],
): TemplateTask[] {
  const count = inputs.length;
  check.that(count > 0 && count <= mostTasks, `Give 1 to ${mostTasks} tasks.`, ['tasks']);
  return inputs.map((task, own) => {
    const path = ['tasks', String(own)];
    const positions = [...new Set(task.predecessorPositions ?? [])];
    for (const position of positions) {
      check.that(
        position >= 0 && position < own,
        `A task of a template comes only after earlier ones: name positions from 0 to ${own - 1}.`,
        [...path, 'predecessorPositions'],
      );
    }
    return {
      title: check.words(task.title, [...path, 'title']),
      kind: task.kind,
      ...readEstimate(check, task.estimate, [...path, 'estimate']),
      rule: task.rule,
      steps: readSteps(check, task.rule, task.steps ?? [], path),
      predecessorPositions: positions,
      hazardKinds: [...new Set(task.hazardKinds ?? [])],
      note: check.text(task.note, [...path, 'note']),
    };
  });
}
