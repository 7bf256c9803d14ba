/** ADDED and DROPPED change what is to be done; OVERRUN and SAVED what the same work takes. */
export type PlanChangeKind = 'ADDED' | 'DROPPED' | 'OVERRUN' | 'SAVED';

export interface PlanChange {
  readonly taskId: string;
  readonly kind: PlanChangeKind;
  /** Hours that it adds to the whole; below 0 where it takes away. */
  readonly hours: number;
}

export interface PlanBridge {
  readonly baselineHours: number;
  /** Scope: budgets of tasks added since, less those of tasks dropped. */
  readonly scopeGrowthHours: number;
  /** The same work taking more (or, below 0, less) than its budget. */
  readonly overrunHours: number;
  /** Spent, and still expected: baseline + scope growth + overrun. */
  readonly expectedAtCompletionHours: number;
  /** The largest first. */
  readonly changes: readonly PlanChange[];
}

export interface TaskAgainstPlan {
  readonly taskId: string;
  /** In the kept plan; null for a task added since. */
  readonly baselineHours: number | null;
  /** Of a task added since: its first estimate. */
  readonly ownHours: number;
  readonly isDropped: boolean;
  readonly spentHours: number;
  /** 0 once done or dropped. */
  readonly remainingHours: number;
}

/** Less than a minute is no change. */
const LEAST_HOURS = 1 / 60;

/**
 * From the kept plan to what the project will have taken, scope growth apart from overrun: the
 * parts add up to the whole. Hours spent on a task that was dropped are an overrun.
 */
export function planChanges(tasks: readonly TaskAgainstPlan[]): PlanBridge {
  const changes: PlanChange[] = [];
  let baselineHours = 0;
  let scopeGrowthHours = 0;
  let overrunHours = 0;
  let expectedAtCompletionHours = 0;
  const scope = (taskId: string, kind: PlanChangeKind, hours: number) => {
    scopeGrowthHours += hours;
    changes.push({ taskId, kind, hours });
  };
  for (const task of tasks) {
    const { taskId, isDropped, spentHours, remainingHours } = task;
    const budgetHours = task.baselineHours ?? task.ownHours;
    baselineHours += task.baselineHours ?? 0;
    expectedAtCompletionHours += spentHours + remainingHours;
    if (task.baselineHours === null && !isDropped) scope(taskId, 'ADDED', budgetHours);
    if (task.baselineHours !== null && isDropped) scope(taskId, 'DROPPED', -budgetHours);
    const over = spentHours + remainingHours - (isDropped ? 0 : budgetHours);
    overrunHours += over;
    if (Math.abs(over) >= LEAST_HOURS) {
      changes.push({ taskId, kind: over > 0 ? 'OVERRUN' : 'SAVED', hours: over });
    }
  }
  changes.sort((x, y) => Math.abs(y.hours) - Math.abs(x.hours) || (x.taskId < y.taskId ? -1 : 1));
  return {
    baselineHours,
    scopeGrowthHours,
    overrunHours,
    expectedAtCompletionHours,
    changes,
  };
}
