import { describedEnum } from '../../api/kit/describedEnum.js';

export const WrittenOrder = describedEnum(
  'WrittenOrder',
  'How a list writes a day and a month that are both numbers.',
  {
    DAY_FIRST: '03/04/1971 is the third of April.',
    MONTH_FIRST: '03/04/1971 is the fourth of March.',
  },
);
