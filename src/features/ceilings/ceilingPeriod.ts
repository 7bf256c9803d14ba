import { describedEnum } from '../../api/kit/describedEnum.js';

export const CeilingPeriod = describedEnum('CeilingPeriod', 'What a spending ceiling holds for.', {
  MONTH: 'Any calendar month.',
  YEAR: 'Any calendar year.',
});
export type CeilingPeriod = keyof typeof CeilingPeriod;
