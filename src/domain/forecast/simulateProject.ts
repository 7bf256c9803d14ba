import { compareText } from '../compareText.js';
import { drawHours } from '../estimates/drawHours.js';
import type { TaskToForecast } from '../estimates/forecastRemaining.js';
import { remainingHours, type RemainingHours } from '../estimates/remainingHours.js';
import { seededRandom } from '../estimates/seededRandom.js';
import type { TaskEdge } from '../network/taskEdge.js';
import { commonFactor, tieToCommonFactor } from './commonFactor.js';
import { longestChains } from './longestChains.js';
import { summarise, type HoursOfTrials } from './summarise.js';
import { sumVariance } from './sumVariance.js';
import { tornado, type TornadoBar } from './tornado.js';

export interface ForecastChoices {
  readonly seed: string;
  /** Of the tasks' normal scores, 0 to 1: 0 if each task goes its own way. */
  readonly correlation: number;
  readonly trials: number;
}

export interface TaskForecast {
  readonly id: string;
  readonly remaining: RemainingHours;
  /** Share of trials, 0 to 1, in which it lies on the longest chain. */
  readonly criticality: number;
}

export interface ProjectForecast {
  /** Hours of all that is left, one a trial, in the order of the trials. */
  readonly totals: Float64Array;
  readonly hours: HoursOfTrials;
  /** The longest chain of tasks that wait for one another: no number of hands is faster. */
  readonly chain: HoursOfTrials;
  /** Mean and variance (square hours) by formula, without trials. */
  readonly analytic: { readonly meanHours: number; readonly varianceHours: number };
  /** Open tasks with an estimate, by id. */
  readonly tasks: readonly TaskForecast[];
  readonly tornado: readonly TornadoBar[];
  readonly unestimatedTaskIds: readonly string[];
}

const MOST_BARS = 12;

/**
 * A whole project by seeded trials over its task network. Each task draws from a stream of its own,
 * seeded by `seed` and its id, so the order of the rows changes nothing, a further task changes no
 * other's draws, and every machine gives the same answer.
 *
 * @throws RangeError when two tasks have one id, an estimate has problems, the edges have a circle,
 * or a choice is out of bounds.
 */
export function simulateProject(
  tasks: readonly TaskToForecast[],
  edges: readonly TaskEdge[],
  { seed, correlation, trials }: ForecastChoices,
): ProjectForecast {
  if (!Number.isInteger(trials) || trials < 1) {
    throw new RangeError('The number of trials must be a whole number from 1 up.');
  }
  if (!(correlation >= 0 && correlation <= 1)) {
    throw new RangeError('The correlation between tasks must be a number from 0 to 1.');
  }
  const { open, passed, unestimatedTaskIds } = sorted(tasks);
  const uniforms = new Float64Array(trials);
  const common = new Float64Array(trials);
  if (correlation > 0) {
    seededRandom(`${seed}\u0001`).fill(uniforms);
    common.set(commonFactor(uniforms));
  }
  const totals = new Float64Array(trials);
  const drawn = open.map(({ id, remaining }) => {
    const row = new Float64Array(trials);
    seededRandom(`${seed}\u0000${id}`).fill(uniforms);
    if (correlation > 0) tieToCommonFactor(uniforms, common, correlation);
    drawHours(remaining, uniforms, row);
    for (let trial = 0; trial < trials; trial += 1) totals[trial]! += row[trial]!;
    return { id, left: remaining, row };
  });
  // What is done or not estimated takes no hours here, but still stands between others.
  const nothing = new Float64Array(trials);
  const rows = new Map(drawn.map(({ id, row }) => [id, row]));
  for (const id of passed) rows.set(id, nothing);
  const chains = longestChains(rows, edges, trials);
  return {
    totals,
    hours: summarise(totals),
    chain: summarise(chains.hours),
    analytic: {
      meanHours: open.reduce((sum, { remaining }) => sum + remaining.meanHours, 0),
      varianceHours: sumVariance(
        open.map(({ remaining }) => remaining),
        correlation,
      ),
    },
    tasks: open.map(({ id, remaining }) => ({
      id,
      remaining,
      criticality: chains.criticality.get(id) ?? 0,
    })),
    tornado: tornado(drawn, totals, MOST_BARS),
    unestimatedTaskIds,
  };
}

/** Tasks by id: those with hours left, and the ids of those without. */
function sorted(tasks: readonly TaskToForecast[]) {
  const open: { id: string; remaining: RemainingHours }[] = [];
  const passed: string[] = [];
  const unestimatedTaskIds: string[] = [];
  let previousId: string | null = null;
  for (const task of [...tasks].sort((a, b) => compareText(a.id, b.id))) {
    if (task.id === previousId) throw new RangeError(`Task ${task.id} is listed twice.`);
    previousId = task.id;
    const isOpen = task.state !== 'DONE' && task.state !== 'DROPPED';
    if (isOpen && task.estimate !== null) {
      open.push({ id: task.id, remaining: remainingHours({ ...task, estimate: task.estimate }) });
      continue;
    }
    passed.push(task.id);
    if (isOpen) unestimatedTaskIds.push(task.id);
  }
  return { open, passed, unestimatedTaskIds };
}
