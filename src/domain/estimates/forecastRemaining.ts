import { compareText } from '../compareText.js';
import type { TaskState } from '../taskState.js';
import { drawHours } from './drawHours.js';
import { forecastAssumptions } from './forecastAssumptions.js';
import { quantileOfSorted } from './quantileOfSorted.js';
import { remainingHours } from './remainingHours.js';
import { seededRandom } from './seededRandom.js';
import type { ThreePointEstimate } from './threePointEstimate.js';

export interface TaskToForecast {
  readonly id: string;
  readonly state: TaskState;
  /** null when the task has not been estimated; it is then left out, and the forecast says so. */
  readonly estimate: ThreePointEstimate | null;
  readonly spentHours: number;
}

export interface RemainingForecast {
  /** Mean of the trials. */
  readonly expectedHours: number;
  readonly p50Hours: number;
  readonly p80Hours: number;
  readonly p95Hours: number;
  /** Mean and variance (square hours) by formula, without trials. */
  readonly analytic: { readonly meanHours: number; readonly varianceHours: number };
  /** How far `expectedHours` may lie from the analytic mean by chance: one standard error. */
  readonly standardErrorHours: number;
  readonly trials: number;
  readonly seed: string;
  readonly openTaskCount: number;
  /** Open tasks without an estimate, which the hours do not contain. */
  readonly unestimatedTaskIds: readonly string[];
  /** Open tasks on which the pessimistic figure has been passed. */
  readonly refutedTaskIds: readonly string[];
  readonly assumptions: readonly string[];
}

/**
 * Hours left on several tasks, by seeded trials of their sum. Each task draws from a stream of its
 * own, seeded by `seed` and its id, so the order of the rows changes nothing and a further task
 * changes no other's draws.
 *
 * @throws RangeError when two tasks have one id, an estimate has problems, or trials is not 1 or more.
 */
export function forecastRemaining(
  tasks: readonly TaskToForecast[],
  { seed, trials = 10_000 }: { readonly seed: string; readonly trials?: number },
): RemainingForecast {
  if (!Number.isInteger(trials) || trials < 1) {
    throw new RangeError('The number of trials must be a whole number from 1 up.');
  }
  const totals = new Float64Array(trials);
  const uniforms = new Float64Array(trials);
  const unestimatedTaskIds: string[] = [];
  const refutedTaskIds: string[] = [];
  let openTaskCount = 0;
  let meanHours = 0;
  let varianceHours = 0;
  let previousId: string | null = null;

  for (const task of [...tasks].sort((a, b) => compareText(a.id, b.id))) {
    if (task.id === previousId) throw new RangeError(`Task ${task.id} is listed twice.`);
    previousId = task.id;
    if (task.state === 'DONE' || task.state === 'DROPPED') continue;
    openTaskCount += 1;
    if (task.estimate === null) {
      unestimatedTaskIds.push(task.id);
      continue;
    }
    const remaining = remainingHours({ ...task, estimate: task.estimate });
    if (remaining.kind === 'REFUTED') refutedTaskIds.push(task.id);
    meanHours += remaining.meanHours;
    varianceHours += remaining.varianceHours;
    seededRandom(`${seed}\u0000${task.id}`).fill(uniforms);
    drawHours(remaining, uniforms, totals);
  }

  // Rounding never turns an addition of hours into a loss, so a further task never lowers the mean.
  const expectedHours = totals.reduce((sum, hours) => sum + hours, 0) / trials;
  totals.sort();
  return {
    expectedHours,
    p50Hours: quantileOfSorted(totals, 0.5),
    p80Hours: quantileOfSorted(totals, 0.8),
    p95Hours: quantileOfSorted(totals, 0.95),
    analytic: { meanHours, varianceHours },
    standardErrorHours: Math.sqrt(varianceHours / trials),
    trials,
    seed,
    openTaskCount,
    unestimatedTaskIds,
    refutedTaskIds,
    assumptions: forecastAssumptions({
      trials,
      unestimatedCount: unestimatedTaskIds.length,
      refutedCount: refutedTaskIds.length,
    }),
  };
}
