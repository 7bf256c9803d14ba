import type { Blocker, BlockerCode } from '../readiness/blocker.js';
import { mendingHours, type OpenTask } from '../readiness/mendingHours.js';
import type { ShackModel } from './shackModel.js';

/**
 * TASK: finish open tasks. MEND: something no task is planned for. CHECK: make a final check.
 * WHOLE_ITEM: everything that stands against one item. PURCHASE: get an accessory.
 */
export type StepKind = 'TASK' | 'MEND' | 'CHECK' | 'WHOLE_ITEM' | 'PURCHASE';

/** Something that could be done next. */
export interface ShackStep {
  readonly kind: StepKind;
  /** What to do, as a sentence. */
  readonly action: string;
  /** The item that is worked on, or that a new accessory is for or like. */
  readonly itemId: string;
  /** What no longer stands in the way afterwards. */
  readonly settles: readonly Blocker[];
  readonly hours: number;
  readonly hoursRestOn: 'TASKS' | 'DEFAULT';
  readonly taskIds: readonly string[];
  /** The accessory that is added, and the rigs it would serve in which role. */
  readonly adds: { readonly roleCode: string; readonly rigIds: readonly string[] } | null;
}

const CHECKS: readonly BlockerCode[] = [
  'NO_FINAL_CHECK_NAMED',
  'FINAL_CHECK_MISSING',
  'FINAL_CHECK_FAILED',
  'FINAL_CHECK_LAPSED',
];

/** Hours to find, fetch and try an accessory: our own default, no source. */
const PURCHASE_HOURS = 2;

interface TitledTask extends OpenTask {
  readonly title: string;
}

/** Every step that the records suggest: each open task, each mend, each whole item, each purchase. */
export function shackSteps(
  model: ShackModel,
  tasksOf: ReadonlyMap<string, readonly TitledTask[]>,
): ShackStep[] {
  const mends = [...model.items.values()].flatMap(({ itemId, name, blockers }) => {
    const tasks = tasksOf.get(itemId) ?? [];
    const single = groupedByWork(blockers, tasks).map((group) => ({
      ...group,
      itemId,
      adds: null,
      action: actionOf(name, group, tasks),
    }));
    return [
      ...single,
      ...wholeItem(itemId, name, single),
      ...idleTasks(itemId, name, single, tasks),
    ];
  });
  return [...mends, ...purchases(model)];
}

type WorkGroup = Pick<ShackStep, 'kind' | 'settles' | 'hours' | 'hoursRestOn' | 'taskIds'>;

/** Blockers that the same tasks settle are one step; those without a task are one each. */
function groupedByWork(blockers: readonly Blocker[], tasks: readonly OpenTask[]): WorkGroup[] {
  const groups = new Map<string, WorkGroup>();
  for (const blocker of blockers) {
    const { hours, restsOn, taskIds } = mendingHours(blocker.code, tasks);
    const key = restsOn === 'TASKS' ? taskIds.join(' ') : `${blocker.code} ${blocker.subjectId}`;
    const kind = restsOn === 'TASKS' ? 'TASK' : CHECKS.includes(blocker.code) ? 'CHECK' : 'MEND';
    const settles = [...(groups.get(key)?.settles ?? []), blocker];
    groups.set(key, { kind, settles, hours, hoursRestOn: restsOn, taskIds });
  }
  return [...groups.values()];
}

function actionOf(name: string, group: WorkGroup, tasks: readonly TitledTask[]): string {
  if (group.kind !== 'TASK') return `${name}: ${group.settles[0]?.wouldBeMetBy ?? ''}`;
  const titles = tasks
    .filter(({ taskId }) => group.taskIds.includes(taskId))
    .map(({ title }) => `“${title}”`);
  return `${name}: finish ${titles.join(', ')}.`;
}

function wholeItem(itemId: string, name: string, single: readonly ShackStep[]): ShackStep[] {
  if (single.length < 2) return [];
  const settles = single.flatMap((step) => step.settles);
  const things = settles.length === 2 ? 'both things' : `all ${settles.length} things`;
  return [
    {
      kind: 'WHOLE_ITEM',
      action: `${name}: settle ${things} that stand against it.`,
      itemId,
      settles,
      hours: single.reduce((sum, { hours }) => sum + hours, 0),
      hoursRestOn: single.some(({ hoursRestOn }) => hoursRestOn === 'TASKS') ? 'TASKS' : 'DEFAULT',
      taskIds: [...new Set(single.flatMap(({ taskIds }) => taskIds))],
      adds: null,
    },
  ];
}

/** Open tasks that nothing recorded waits for. */
function idleTasks(
  itemId: string,
  name: string,
  single: readonly ShackStep[],
  tasks: readonly TitledTask[],
): ShackStep[] {
  const wanted = new Set(single.flatMap(({ taskIds }) => taskIds));
  return tasks
    .filter(({ taskId }) => !wanted.has(taskId))
    .map(({ taskId, title, expectedHours }) => ({
      kind: 'TASK',
      action: `${name}: finish “${title}”.`,
      itemId,
      settles: [],
      hours: expectedHours,
      hoursRestOn: 'TASKS',
      taskIds: [taskId],
      adds: null,
    }));
}

/** Another of each accessory that serves, for all the rigs it serves; and one for a role without any. */
function purchases({ rigs, items }: ShackModel): ShackStep[] {
  const served = new Map<string, { roleCode: string; roleName: string; rigIds: string[] }>();
  const steps: ShackStep[] = [];
  for (const { rigId, needs } of rigs) {
    for (const { roleCode, roleName, accessoryIds } of needs) {
      if (accessoryIds.length === 0) {
        const action = `Get a ${roleName} for ${items.get(rigId)?.name ?? rigId}.`;
        steps.push(purchase(action, rigId, { roleCode, rigIds: [rigId] }));
      }
      for (const id of accessoryIds) {
        const known = served.get(id);
        if (known) known.rigIds.push(rigId);
        else served.set(id, { roleCode, roleName, rigIds: [rigId] });
      }
    }
  }
  for (const [id, { roleCode, roleName, rigIds }] of served) {
    const action = `Get another ${roleName} that can serve in place of ${items.get(id)?.name ?? id}.`;
    steps.push(purchase(action, id, { roleCode, rigIds }));
  }
  return steps;
}

const purchase = (action: string, itemId: string, adds: ShackStep['adds']): ShackStep => ({
  kind: 'PURCHASE',
  action,
  itemId,
  settles: [],
  hours: PURCHASE_HOURS,
  hoursRestOn: 'DEFAULT',
  taskIds: [],
  adds,
});
