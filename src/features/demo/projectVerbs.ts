import { z } from 'zod';
import { globalId } from '../../api/kit/globalId.js';
import { HazardKind } from '../hazards/hazardKind.js';
import { openProject } from '../projects/openProject.js';
import { ProjectStatus } from '../projects/projectStatus.js';
import { setProjectStatus } from '../projects/setProjectStatus.js';
import { TargetStandard } from '../projects/targetStandard.js';
import { shippedTemplates } from '../templates/shippedTemplates.js';
import { applyTaskTemplate } from '../templates/applyTaskTemplate.js';
import { addTasks } from '../tasks/addTasks.js';
import { EarningRuleKind } from '../tasks/earningRuleKind.js';
import { TaskKind } from '../tasks/taskKind.js';
import { keptVersion } from './keptVersion.js';
import { moneyShape } from './moneyVerbs.js';
import { storyVerb, text, type Telling } from './storyEvent.js';

/** Hours if all goes well, most likely, and if little does. */
const estimate = z.tuple([z.number(), z.number(), z.number()]);

const task = z.strictObject({
  /** What later events call it. */
  key: text,
  title: text,
  kind: z.enum(TaskKind),
  hours: estimate,
  rule: z.enum(EarningRuleKind).default('ZERO_HUNDRED'),
  /** Title → weight. */
  steps: z.record(text, z.int()).optional(),
  after: z.array(text).default([]),
  hazards: z.array(z.enum(HazardKind)).default([]),
  note: text.optional(),
});

const keyOf = ({ item }: Telling, key: string): string => `${item} ${key}`;

export const projectVerbs = {
  open: storyVerb(
    'openProject',
    {
      project: text,
      title: text,
      standard: z.enum(TargetStandard),
      isBegun: z.boolean().default(true),
      ceiling: moneyShape.optional(),
      ceilingHours: z.number().optional(),
      decision: text.optional(),
      tasks: z.array(task).default([]),
    },
    async (telling, event) => {
      const { work, clock, names, item } = telling;
      const id = await openProject(work, {
        itemId: names.id('item', item),
        title: event.title,
        targetStandard: event.standard,
        startedOn: event.isBegun ? clock.day(event.at.slice(0, 10)) : null,
        ceiling: event.ceiling ?? null,
        ceilingHours: event.ceilingHours ?? null,
        decision: event.decision ?? null,
      });
      names.keep('project', keyOf(telling, event.project), globalId('Project', id));
      if (event.tasks.length > 0) await plan(telling, event.project, event.tasks);
    },
  ),

  plan: storyVerb('addTasks', { project: text, tasks: z.array(task).min(1) }, (telling, event) =>
    plan(telling, event.project, event.tasks),
  ),

  /** The tasks of a template that comes with the program, or some of them by their titles. */
  apply: storyVerb(
    'applyTaskTemplate',
    { project: text, template: text, only: z.array(text).optional() },
    async (telling, { project, template: title, only }) => {
      const template = shippedTemplates.find((one) => one.title === title);
      if (!template) throw new Error(`There is no template “${title}”.`);
      const positions = only?.map((wanted) => {
        const position = template.tasks.findIndex((one) => one.title === wanted);
        if (position < 0) throw new Error(`“${title}” has no task “${wanted}”.`);
        return position;
      });
      return applyTaskTemplate(telling.work, {
        templateId: globalId('TaskTemplate', template.id),
        projectId: telling.names.id('project', keyOf(telling, project)),
        usesHistory: true,
        ...(positions && { positions }),
      });
    },
  ),

  decide: storyVerb(
    'setProjectStatus',
    { project: text, status: z.enum(ProjectStatus), decision: text.optional() },
    async (telling, { project, status, decision }) => {
      const id = telling.names.id('project', keyOf(telling, project));
      const version = await keptVersion(telling.work, 'project', id);
      const said = decision === undefined ? {} : { decision };
      return setProjectStatus(telling.work, { id, version, status, ...said });
    },
  ),
};

async function plan(
  telling: Telling,
  project: string,
  tasks: readonly z.infer<typeof task>[],
): Promise<void> {
  const { work, names } = telling;
  const positions = new Map(tasks.map(({ key }, position) => [key, position]));
  const ids = await addTasks(work, {
    projectId: names.id('project', keyOf(telling, project)),
    tasks: tasks.map(({ title, kind, hours, rule, steps, after, hazards, note }) => ({
      title,
      kind,
      rule,
      note: note ?? null,
      hazardKinds: hazards,
      estimate: { optimisticHours: hours[0], likelyHours: hours[1], pessimisticHours: hours[2] },
      steps: Object.entries(steps ?? {}).map(([name, weight]) => ({ title: name, weight })),
      predecessorPositions: after.flatMap((key) => positions.get(key) ?? []),
      predecessorIds: after
        .filter((key) => !positions.has(key))
        .map((key) => names.id('task', keyOf(telling, key))),
    })),
  });
  tasks.forEach(({ key }, position) => {
    names.keep('task', keyOf(telling, key), globalId('Task', ids[position] ?? ''));
  });
}
