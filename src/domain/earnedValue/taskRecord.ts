import { pertMoments } from '../estimates/pertMoments.js';
import type { ThreePointEstimate } from '../estimates/threePointEstimate.js';
import type { TaskState } from '../taskState.js';
import { earnedShare } from './earnedShare.js';
import type { EarningRule } from './earningRule.js';

/** How a task stood from an instant on. */
export interface TaskRevision {
  readonly atMs: number;
  readonly state: TaskState;
  readonly estimate: ThreePointEstimate;
  /** Steps of a weighted rule are in `TaskRecord.steps`. */
  readonly earningRule:
    Exclude<EarningRule, { kind: 'WEIGHTED_STEPS' }> | { kind: 'WEIGHTED_STEPS' };
}

/** A task with its past. */
export interface TaskRecord {
  readonly id: string;
  /** Oldest first; at least one. */
  readonly revisions: readonly TaskRevision[];
  readonly steps: readonly { name: string; weight: number; doneAtMs: number | null }[];
  /** Stretches of counted time, in any order. */
  readonly worked: readonly { startedAtMs: number; endedAtMs: number }[];
}

/** How the task stood at an instant; null before it was there. */
export function revisionAt({ revisions }: TaskRecord, atMs: number): TaskRevision | null {
  let found: TaskRevision | null = null;
  for (const revision of revisions) if (revision.atMs <= atMs) found = revision;
  return found;
}

/** The estimate as it stood when the task was first written down: its budget where no plan was kept. */
export const firstEstimate = ({ revisions }: TaskRecord): ThreePointEstimate =>
  (revisions[0] as TaskRevision).estimate;

export const meanOfEstimate = (estimate: ThreePointEstimate): number =>
  pertMoments(estimate).meanHours;

/** The share of its budget that a task had earned at an instant, 0 to 1. */
export function earnedShareAt(task: TaskRecord, atMs: number): number {
  const revision = revisionAt(task, atMs);
  if (revision === null) return 0;
  const { earningRule, state } = revision;
  if (earningRule.kind !== 'WEIGHTED_STEPS') return earnedShare(earningRule, state).share;
  if (task.steps.length === 0) return earnedShare({ kind: 'ZERO_HUNDRED' }, state).share;
  const steps = task.steps.map(({ name, weight, doneAtMs }) => ({
    name,
    weight,
    isDone: doneAtMs !== null && doneAtMs <= atMs,
  }));
  return earnedShare({ kind: 'WEIGHTED_STEPS', steps }, state).share;
}

/** Hours that had been given to a task by an instant. */
export const spentHoursAt = ({ worked }: TaskRecord, atMs: number): number =>
  worked.reduce(
    (sum, { startedAtMs, endedAtMs }) =>
      sum + Math.max(0, Math.min(endedAtMs, atMs) - startedAtMs) / 3_600_000,
    0,
  );
