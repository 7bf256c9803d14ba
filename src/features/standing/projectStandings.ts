import type { Overlap } from '../../domain/hours/overlapList.js';
import type { MonthTally } from '../../domain/hours/tallySeconds.js';
import type { WorkSession } from '../../domain/hours/workSession.js';
import type { TaskOfItem } from '../tasks/tasksForItems.reads.js';
import { asMoney, projectCost } from './costStanding.js';
import { hoursStanding } from './hoursStanding.js';
import type { StandingFacts } from './standingFacts.js';
import { taskWorkStanding } from './taskWorkStanding.js';

/** What the projects of one item are computed from; all of it of that item alone. */
export interface ProjectInputs {
  projectIds: readonly string[];
  /** As for the item. */
  seed: string;
  tasks: readonly TaskOfItem[];
  sessions: readonly WorkSession[];
  tallies: readonly MonthTally[];
  overlaps: readonly Overlap[];
  secondsByTask: ReadonlyMap<string, number>;
  expenses: readonly { projectId: string | null; amount: number | string; currency: string }[];
}

/** How each project of an item stands: its own tasks, their sessions, its own expenses. */
export function projectStandings(inputs: ProjectInputs, nowMs: number): StandingFacts['projects'] {
  const standings: StandingFacts['projects'] = {};
  for (const id of inputs.projectIds) {
    const tasks = inputs.tasks.filter(({ projectId }) => projectId === id);
    const own = new Set<string | null>(tasks.map((task) => task.id));
    const { completion, remaining } = taskWorkStanding(tasks, inputs.secondsByTask, {
      seed: inputs.seed,
      nowMs,
    });
    const expenses = inputs.expenses.filter(({ projectId }) => projectId === id);
    standings[id] = {
      completion,
      remaining,
      hours: hoursStanding(
        {
          sessions: inputs.sessions.filter(({ taskId }) => own.has(taskId)),
          tallies: inputs.tallies.filter(({ taskId }) => own.has(taskId)),
          overlaps: inputs.overlaps,
        },
        nowMs,
      ),
      cost: projectCost(expenses.map(asMoney), nowMs),
    };
  }
  return standings;
}
