import { completion } from '../../domain/earnedValue/completion.js';
import { forecastRemaining } from '../../domain/estimates/forecastRemaining.js';
import type { TaskOfItem } from '../tasks/tasksForItems.reads.js';
import type { Completion } from './completion.type.js';
import type { RemainingWork } from './remainingWork.type.js';
import { hundredths, shownBasis } from './standingFacts.js';

export interface TaskWork {
  completion: Completion;
  remaining: RemainingWork;
  /** Variance of the remaining work by formula, in square hours. */
  varianceHours: number;
}

/**
 * Completion and remaining work of some tasks; those of abandoned projects count for nothing.
 * @param seed the item's number: a task draws the same whether its project or its item is asked about.
 */
export function taskWorkStanding(
  all: readonly TaskOfItem[],
  secondsByTask: ReadonlyMap<string, number>,
  { seed, nowMs }: { seed: string; nowMs: number },
): TaskWork {
  const tasks = all.filter((task) => task.projectStatus !== 'ABANDONED');
  const done = completion(tasks);
  const toForecast = tasks.map(({ id, drawKey, state, estimate }) => ({
    id: drawKey,
    state,
    estimate,
    spentHours: (secondsByTask.get(id) ?? 0) / 3600,
  }));
  const isNothingOpen = tasks.every(({ state }) => state === 'DONE' || state === 'DROPPED');
  const left = forecastRemaining(toForecast, { seed, ...(isNothingOpen && { trials: 1 }) });
  return {
    completion: {
      share: done.share === null ? null : Math.round(done.share * 10_000) / 10_000,
      budgetedHours: hundredths(done.budgetedHours),
      earnedHours: hundredths(done.earnedHours),
      basis: shownBasis(done.basis, nowMs, abandonedNote(all.length - tasks.length)),
    },
    remaining: {
      expectedHours: hundredths(left.expectedHours),
      p50Hours: hundredths(left.p50Hours),
      p80Hours: hundredths(left.p80Hours),
      p95Hours: hundredths(left.p95Hours),
      openTasks: left.openTaskCount,
      refutedTasks: left.refutedTaskIds.length,
      basis: shownBasis(
        {
          method: isNothingOpen
            ? 'No task is open, so nothing remains of what is planned.'
            : 'Sum of what is left of each open task, given the hours already spent on it; percentiles from seeded trials.',
          counted: [
            { what: 'open tasks', count: left.openTaskCount },
            { what: 'trials', count: isNothingOpen ? 0 : left.trials },
          ],
        },
        nowMs,
        isNothingOpen ? [] : left.assumptions,
      ),
    },
    varianceHours: left.analytic.varianceHours,
  };
}

const abandonedNote = (count: number): string[] =>
  count === 0 ? [] : [`${count} tasks of abandoned projects are left out.`];
