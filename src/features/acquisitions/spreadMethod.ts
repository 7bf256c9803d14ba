import { describedEnum } from '../../api/kit/describedEnum.js';

export const SpreadMethod = describedEnum(
  'SpreadMethod',
  'How the price of a lot is spread over the things in it.',
  {
    EQUAL_SHARES: 'Every line the same.',
    STATED_SHARES: 'By the share stated for each line.',
    STATED_VALUES: 'By the value stated for each line.',
  },
);
export type SpreadMethod = keyof typeof SpreadMethod;
