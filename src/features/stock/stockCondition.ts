import { describedEnum } from '../../api/kit/describedEnum.js';

export const StockCondition = describedEnum(
  'StockCondition',
  'What shape spares are in. What readings say of a single component stands with the component.',
  {
    UNUSED: 'Never fitted, whatever its age.',
    USED_TESTED: 'Taken out of a set; a tester found nothing against it.',
    USED_UNTESTED: 'Taken out of a set and not tested since.',
    FOR_REPAIR: 'Needs work before it can be fitted.',
    UNKNOWN: 'Not recorded.',
  },
);
export type StockCondition = keyof typeof StockCondition;
