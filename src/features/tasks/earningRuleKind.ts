import { describedEnum } from '../../api/kit/describedEnum.js';

export const EarningRuleKind = describedEnum(
  'EarningRuleKind',
  'How a task earns its budgeted hours.',
  {
    ZERO_HUNDRED: 'Nothing until it is done, then all.',
    FIFTY_FIFTY: 'Half when begun, the rest when done.',
    WEIGHTED_STEPS: 'By the weights of its finished steps.',
    PERCENT_WITH_EVIDENCE:
      'By a stated percentage that names its evidence; without evidence, nothing.',
  },
);
export type EarningRuleKind = keyof typeof EarningRuleKind;
