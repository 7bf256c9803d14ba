import { followers } from '../network/followers.js';
import type { NextTaskFacts, TaskToChoose } from './rankNextTasks.js';

export type NextTaskReasonCode =
  | 'BRINGS_ITEM_NEARER'
  | 'LACKS_ONLY_CHECKS'
  | 'FREES_PROJECT'
  | 'OPENS_TASKS'
  | 'EARNS_COMPLETION'
  | 'IS_BEGUN';

/** Why a task is worth doing now, with its share in the ranking. */
export interface NextTaskReason {
  readonly code: NextTaskReasonCode;
  readonly message: string;
  readonly points: number;
}

const points = { nearer: 40, checks: 25, frees: 20, opens: 20, earns: 10, begun: 5 };
/** Waiting hours at which half of the points for opening tasks are given. */
const halfWayHours = 4;

/** What finishing a task would do for readiness, completion, and what waits for it. */
export function whatItUnlocks(
  task: TaskToChoose,
  doable: readonly TaskToChoose[],
  facts: NextTaskFacts,
): NextTaskReason[] {
  const reasons: NextTaskReason[] = [];
  const add = (code: NextTaskReasonCode, share: number, most: number, message: string) => {
    const given = Math.round(most * Math.min(1, share) * 10) / 10;
    if (given > 0) reasons.push({ code, message, points: given });
  };
  const item = facts.items.get(task.itemId);
  const project = facts.projects.get(task.projectId);
  const leftOnItem = facts.tasks
    .filter(({ itemId, state }) => itemId === task.itemId && isOpen(state))
    .reduce((sum, { leftHours }) => sum + leftHours, 0);
  if (item && !item.isReadyForUse) {
    add(
      'BRINGS_ITEM_NEARER',
      leftOnItem > 0 ? task.leftHours / leftOnItem : 0,
      points.nearer,
      `${item.name} is not ready yet; this is ${hours(task.leftHours)} of the ${hours(leftOnItem)} left on it.`,
    );
    if (item.lacksOnlyChecks && task.kind === 'TESTING') {
      add('LACKS_ONLY_CHECKS', 1, points.checks, `${item.name} lacks nothing but final checks.`);
    }
  }
  const waiting = waitingFor(task.id, facts);
  if (waiting.length > 0) {
    const waitingHours = waiting.reduce((sum, { leftHours }) => sum + leftHours, 0);
    add(
      'OPENS_TASKS',
      waitingHours / (waitingHours + halfWayHours),
      points.opens,
      `${waiting.length} ${waiting.length === 1 ? 'task waits' : 'tasks wait'} for it, with ${hours(waitingHours)} of work.`,
    );
    const others = doable.some(
      (other) => other.projectId === task.projectId && other.id !== task.id,
    );
    if (!others && project) {
      add(
        'FREES_PROJECT',
        1,
        points.frees,
        `Nothing else of “${project.title}” can be done until this is.`,
      );
    }
  }
  if (project && project.budgetedHours > 0) {
    const share = task.unearnedHours / project.budgetedHours;
    add(
      'EARNS_COMPLETION',
      share,
      points.earns,
      `It earns ${Math.round(share * 100)} % of the hours planned for “${project.title}”.`,
    );
  }
  if (task.state === 'IN_PROGRESS') add('IS_BEGUN', 1, points.begun, 'It is begun already.');
  return reasons;
}

/** Everything that waits for a task, directly or behind others. */
function waitingFor(id: string, { tasks, edges }: NextTaskFacts): TaskToChoose[] {
  const afterwards = followers(edges);
  const found = new Set<string>();
  const toVisit = [id];
  for (let next = toVisit.pop(); next !== undefined; next = toVisit.pop()) {
    for (const after of afterwards.get(next) ?? []) {
      if (found.has(after)) continue;
      found.add(after);
      toVisit.push(after);
    }
  }
  found.delete(id);
  return tasks.filter((task) => found.has(task.id) && isOpen(task.state));
}

const isOpen = (state: TaskToChoose['state']): boolean => state !== 'DONE' && state !== 'DROPPED';

const hours = (value: number): string => `${Math.round(value * 10) / 10} h`;
