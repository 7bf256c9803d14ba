import type { LocalDate } from '../dates/localDate.js';
import type { PlannedTask } from './plannedDates.js';
import { plannedHours } from './plannedHours.js';
import {
  earnedShareAt,
  meanOfEstimate,
  revisionAt,
  spentHoursAt,
  type TaskRecord,
} from './taskRecord.js';

export interface BurnUpPoint {
  readonly on: LocalDate;
  /** Hours in the project as it was then planned: tasks not dropped, by the estimate then in force. */
  readonly scopeHours: number;
  /** Hours that the kept plan wanted done by then; null where none is kept. */
  readonly plannedHours: number | null;
  readonly earnedHours: number;
  readonly spentHours: number;
}

/**
 * A project's hours over time, ready to plot: what there was to do, what was to be done, what was
 * earned (of each task's budget) and what was spent, at the end of each day given.
 *
 * @param budgets by task; a task that has none weighs nothing.
 * @param baseline the kept plan, or null.
 */
export function burnUp(
  tasks: readonly TaskRecord[],
  budgets: ReadonlyMap<string, number>,
  baseline: readonly PlannedTask[] | null,
  days: readonly { on: LocalDate; endsAtMs: number }[],
): BurnUpPoint[] {
  return days.map(({ on, endsAtMs }) => {
    let scopeHours = 0;
    let earnedHours = 0;
    let spentHours = 0;
    for (const task of tasks) {
      spentHours += spentHoursAt(task, endsAtMs);
      const revision = revisionAt(task, endsAtMs);
      if (revision === null || revision.state === 'DROPPED') continue;
      scopeHours += meanOfEstimate(revision.estimate);
      earnedHours += (budgets.get(task.id) ?? 0) * earnedShareAt(task, endsAtMs);
    }
    return {
      on,
      scopeHours,
      plannedHours: baseline === null ? null : plannedHours(baseline, on),
      earnedHours,
      spentHours,
    };
  });
}
