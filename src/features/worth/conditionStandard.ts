import { describedEnum } from '../../api/kit/describedEnum.js';

export const ConditionStandard = describedEnum(
  'ConditionStandard',
  'The condition that a value is for. NOT_WORKING to AS_MADE are rungs of one ladder, between which ' +
    'values are interpolated; FOR_SHOW stands beside it.',
  {
    NOT_WORKING: 'Complete or nearly so, and not working.',
    WORKING: 'Working; looks do not matter.',
    WORKING_AND_CLEAN: 'Working, cleaned, with an honest finish.',
    AS_MADE: 'Looks and works as it left the maker.',
    FOR_SHOW: 'For the eye; need not work.',
  },
);
export type ConditionStandard = keyof typeof ConditionStandard;
