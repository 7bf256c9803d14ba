import type { HoursLeft } from '../estimates/hoursLeft.js';
import { quantileOfSorted } from '../estimates/quantileOfSorted.js';

/** What one task's uncertainty does to the project's p80. */
export interface TornadoBar {
  readonly id: string;
  /** The project's p80 if the task took its own p10, and its own p90. */
  readonly lowHours: number;
  readonly highHours: number;
  /** The project's p80 if the task were sure to take its mean: what knowing it is worth. */
  readonly p80IfCertainHours: number;
}

export interface TaskTrials {
  readonly id: string;
  readonly left: HoursLeft;
  /** Hours, one a trial. */
  readonly row: Float64Array;
}

/**
 * The tasks whose uncertainty moves the project's p80 most, the widest bar first. One task is fixed
 * at a time and the others keep their trials.
 *
 * @param totals hours of the whole project, one a trial.
 */
export function tornado(
  tasks: readonly TaskTrials[],
  totals: Float64Array,
  mostBars: number,
): TornadoBar[] {
  return tasks
    .map((task) => ({ ...task, low: task.left.hoursAt(0.1), high: task.left.hoursAt(0.9) }))
    .filter(({ low, high }) => high > low)
    .sort((x, y) => y.high - y.low - (x.high - x.low) || (x.id < y.id ? -1 : 1))
    .slice(0, mostBars)
    .map(({ id, left, row, low, high }) => {
      const others = totals.map((total, trial) => total - row[trial]!).sort();
      const restHours = quantileOfSorted(others, 0.8);
      return {
        id,
        lowHours: restHours + low,
        highHours: restHours + high,
        p80IfCertainHours: restHours + left.meanHours,
      };
    });
}
