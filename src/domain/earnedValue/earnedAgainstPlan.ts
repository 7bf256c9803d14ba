import type { LocalDate } from '../dates/localDate.js';
import { remainingHours } from '../estimates/remainingHours.js';
import type { EarnedValueAmounts } from './earnedValueFigures.js';
import { planChanges, type PlanBridge } from './planChanges.js';
import type { PlannedTask } from './plannedDates.js';
import { plannedHours } from './plannedHours.js';
import {
  earnedShareAt,
  firstEstimate,
  meanOfEstimate,
  revisionAt,
  spentHoursAt,
  type TaskRecord,
  type TaskRevision,
} from './taskRecord.js';

export interface EarnedAgainstPlan {
  /** In hours. */
  readonly amounts: EarnedValueAmounts;
  /** By task: what it may take by the plan. */
  readonly budgets: ReadonlyMap<string, number>;
  /** null without a kept plan. */
  readonly bridge: PlanBridge | null;
}

/**
 * What a project has planned, earned and spent at an instant. The budget of a task is that of the
 * kept plan; of one added since, its first estimate; without a kept plan, its estimate as it is. A
 * task added since has no date in the plan: it counts as planned when it is earned, so that it
 * makes the project neither early nor late. Dropped tasks have no budget, but what was spent on
 * them was spent.
 *
 * @param baseline the kept plan, or null.
 */
export function earnedAgainstPlan(
  tasks: readonly TaskRecord[],
  baseline: readonly PlannedTask[] | null,
  { nowMs, today }: { nowMs: number; today: LocalDate },
): EarnedAgainstPlan {
  const planned = new Map(baseline?.map((task) => [task.taskId, task]));
  const budgets = new Map<string, number>();
  const amounts = { budgetAtCompletion: 0, earnedValue: 0, actualCost: 0 };
  let plannedValue = 0;
  const told = tasks.map((task) => {
    const now = revisionAt(task, nowMs) ?? (task.revisions[0] as TaskRevision);
    const kept = planned.get(task.id);
    const isDropped = now.state === 'DROPPED';
    const ownHours = meanOfEstimate(baseline === null ? now.estimate : firstEstimate(task));
    const budgetHours = kept?.budgetHours ?? ownHours;
    const spentHours = spentHoursAt(task, nowMs);
    budgets.set(task.id, budgetHours);
    amounts.actualCost += spentHours;
    if (!isDropped) {
      const earned = budgetHours * earnedShareAt(task, nowMs);
      amounts.budgetAtCompletion += budgetHours;
      amounts.earnedValue += earned;
      plannedValue += kept === undefined ? earned : plannedHours([kept], today);
    }
    return {
      taskId: task.id,
      baselineHours: kept?.budgetHours ?? null,
      ownHours,
      isDropped,
      spentHours,
      remainingHours: remainingHours({ state: now.state, estimate: now.estimate, spentHours })
        .meanHours,
    };
  });
  return {
    amounts: { ...amounts, plannedValue: baseline === null ? null : plannedValue },
    budgets,
    bridge: baseline === null ? null : planChanges(told),
  };
}
