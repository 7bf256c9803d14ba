import type { TaskState } from '../taskState.js';
import type { EarningRule } from './earningRule.js';
import { earningRuleProblems } from './earningRuleProblems.js';

export interface EarnedShare {
  /** 0 to 1 of the task's budgeted hours. */
  readonly share: number;
  /** Why it is that much, in a sentence. */
  readonly basis: string;
}

/**
 * The share of a task that is earned. A done task has earned all of it under every rule; a dropped
 * one nothing. Before that the rule decides; hours spent never do.
 *
 * @throws RangeError when the rule has problems.
 */
export function earnedShare(rule: EarningRule, state: TaskState): EarnedShare {
  const [problem] = earningRuleProblems(rule);
  if (problem !== undefined) throw new RangeError(problem.message);
  if (state === 'DONE') return { share: 1, basis: 'Done: all of it is earned.' };
  if (state === 'DROPPED') return { share: 0, basis: 'Dropped: nothing is earned.' };

  switch (rule.kind) {
    case 'ZERO_HUNDRED':
      return { share: 0, basis: 'Earns nothing until it is done.' };
    case 'FIFTY_FIFTY':
      return state === 'IN_PROGRESS'
        ? { share: 0.5, basis: 'Half is earned on starting, the rest when it is done.' }
        : { share: 0, basis: 'Not started; half is earned on starting.' };
    case 'WEIGHTED_STEPS': {
      const done = rule.steps.filter(({ isDone }) => isDone);
      const share = totalWeight(done) / totalWeight(rule.steps);
      return { share, basis: `${done.length} of ${rule.steps.length} weighted steps are done.` };
    }
    case 'PERCENT_WITH_EVIDENCE':
      return rule.evidence === null
        ? {
            share: 0,
            basis: `${rule.percent} % is claimed but nothing shows it, so nothing is earned.`,
          }
        : {
            share: rule.percent / 100,
            basis: `${rule.percent} %, shown by a ${rule.evidence.kind.toLowerCase()}.`,
          };
  }
}

function totalWeight(steps: readonly { readonly weight: number }[]): number {
  return steps.reduce((sum, { weight }) => sum + weight, 0);
}
