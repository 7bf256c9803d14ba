import type { Problem } from '../problem.js';
import type { EarningRule } from './earningRule.js';

export type EarningRuleProblemCode = 'NO_STEPS' | 'WEIGHT_NOT_ABOVE_ZERO' | 'PERCENT_OUT_OF_RANGE';

/** Everything that is wrong with an earning rule as entered; empty when nothing is. */
export function earningRuleProblems(rule: EarningRule): Problem<EarningRuleProblemCode>[] {
  switch (rule.kind) {
    case 'ZERO_HUNDRED':
    case 'FIFTY_FIFTY':
      return [];
    case 'WEIGHTED_STEPS':
      if (rule.steps.length === 0) {
        return [
          {
            code: 'NO_STEPS',
            message: 'Name at least one step, or choose another earning rule.',
            path: ['steps'],
            severity: 'ERROR',
          },
        ];
      }
      return rule.steps.flatMap(({ name, weight }, index) =>
        weight > 0 && weight < Infinity
          ? []
          : [
              {
                code: 'WEIGHT_NOT_ABOVE_ZERO',
                message: `Give step "${name}" a weight above 0.`,
                path: ['steps', String(index), 'weight'],
                severity: 'ERROR',
              },
            ],
      );
    case 'PERCENT_WITH_EVIDENCE':
      if (rule.percent >= 0 && rule.percent <= 100) return [];
      return [
        {
          code: 'PERCENT_OUT_OF_RANGE',
          message: 'Give the percentage done as a number from 0 to 100.',
          path: ['percent'],
          severity: 'ERROR',
        },
      ];
  }
}
