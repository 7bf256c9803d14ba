import type { Checklist } from '../../db/checklist.js';
import { earningRuleProblems } from '../../domain/earnedValue/earningRuleProblems.js';
import type { EarningRuleKind } from './earningRuleKind.js';
import type { TaskStepInput } from './task.inputs.js';

const mostSteps = 100;
const largestWeight = 1_000_000;

/** Steps that suit the rule, with their titles; what is wrong goes to the checklist. */
export function readSteps(
  check: Checklist,
  rule: EarningRuleKind,
  inputs: readonly TaskStepInput[],
  path: string[],
): { title: string; weight: number }[] {
  check.that(inputs.length <= mostSteps, `${mostSteps} steps are the most.`, [...path, 'steps']);
  const steps = inputs.map(({ title, weight }, index) => {
    const at = [...path, 'steps', String(index)];
    check.that(weight <= largestWeight, 'This weight is too large.', [...at, 'weight']);
    return { title: check.words(title, [...at, 'title']), weight };
  });
  if (steps.length > 0 || rule === 'WEIGHTED_STEPS') {
    const weighted = steps.map(({ title, weight }) => ({ name: title, weight, isDone: false }));
    for (const problem of earningRuleProblems({ kind: 'WEIGHTED_STEPS', steps: weighted })) {
      check.refuse(problem.message, [...path, ...problem.path]);
    }
  }
  return steps;
}
