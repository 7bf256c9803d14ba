import { describedEnum } from '../../api/kit/describedEnum.js';

export const Uncertainty = describedEnum(
  'Uncertainty',
  'What is not known before going on, each of it taken alone.',
  {
    SUCCESS: 'Whether finishing reaches the standard at all.',
    PART_PRICE: 'What a missing part will cost.',
    PLANNED_COST: 'What a service or other planned cost will come to.',
    OWN_HOURS: 'How many hours are left; it counts where own time has a rate.',
    VALUE_FINISHED: 'What the item will be worth at the target standard.',
  },
);
export type Uncertainty = keyof typeof Uncertainty;
