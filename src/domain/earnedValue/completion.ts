import type { Basis } from '../basis.js';
import { pertMoments } from '../estimates/pertMoments.js';
import type { ThreePointEstimate } from '../estimates/threePointEstimate.js';
import type { TaskState } from '../taskState.js';
import { earnedShare } from './earnedShare.js';
import type { EarningRule } from './earningRule.js';

export interface BudgetedTask {
  readonly id: string;
  readonly state: TaskState;
  readonly earningRule: EarningRule;
  /** null when the task has not been estimated; it then weighs nothing, and the basis says so. */
  readonly estimate: ThreePointEstimate | null;
}

export interface Completion {
  /** 0 to 1; null when nothing is budgeted, so that there is nothing to be a share of. */
  readonly share: number | null;
  readonly budgetedHours: number;
  readonly earnedHours: number;
  readonly basis: CompletionBasis;
}

/** The caller, who knows it, adds as of when. */
export interface CompletionBasis extends Omit<Basis, 'asOfMs'> {
  /** Tasks without an estimate, which neither budget nor earn. */
  readonly unestimatedTaskIds: readonly string[];
  /** Tasks on which a percentage is claimed that nothing shows. */
  readonly unevidencedTaskIds: readonly string[];
}

/**
 * The share of the budgeted hours that is earned. Each task that was not dropped is weighted by
 * the mean of its estimate; hours spent do not enter.
 *
 * @throws RangeError when an earning rule has problems.
 */
export function completion(tasks: readonly BudgetedTask[]): Completion {
  const unestimatedTaskIds: string[] = [];
  const unevidencedTaskIds: string[] = [];
  let weighedTaskCount = 0;
  let droppedTaskCount = 0;
  let budgetedHours = 0;
  let earnedHours = 0;

  for (const { id, state, earningRule, estimate } of tasks) {
    if (state === 'DROPPED') {
      droppedTaskCount += 1;
      continue;
    }
    if (estimate === null) {
      unestimatedTaskIds.push(id);
      continue;
    }
    weighedTaskCount += 1;
    const { meanHours } = pertMoments(estimate);
    budgetedHours += meanHours;
    earnedHours += meanHours * earnedShare(earningRule, state).share;
    if (claimsWithoutEvidence(earningRule, state)) unevidencedTaskIds.push(id);
  }
  return {
    share: budgetedHours > 0 ? earnedHours / budgetedHours : null,
    budgetedHours,
    earnedHours,
    basis: {
      method:
        'Earned value: each task weighted by its estimate (optimistic + 4 likely + pessimistic) / 6, ' +
        'earned by its own rule; dropped tasks left out; hours spent do not enter.',
      counted: [
        { what: 'tasks weighed', count: weighedTaskCount },
        { what: 'dropped tasks left out', count: droppedTaskCount },
        { what: 'tasks without an estimate', count: unestimatedTaskIds.length },
      ],
      unestimatedTaskIds,
      unevidencedTaskIds,
    },
  };
}

function claimsWithoutEvidence(rule: EarningRule, state: TaskState): boolean {
  return (
    rule.kind === 'PERCENT_WITH_EVIDENCE' &&
    rule.evidence === null &&
    rule.percent > 0 &&
    state !== 'DONE'
  );
}
