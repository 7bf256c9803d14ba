import { describedEnum } from '../../api/kit/describedEnum.js';

export const TargetStandard = describedEnum(
  'TargetStandard',
  'How far a restoration is meant to go.',
  {
    WORKING: 'For use on the air; looks do not matter.',
    WORKING_AND_CLEAN: 'For use, cleaned, with an honest finish.',
    AS_MADE: 'Looks and works as it left the maker.',
    FOR_SHOW: 'For the eye; need not work.',
    PARTS_DONOR: 'To be taken apart for others.',
  },
);
export type TargetStandard = keyof typeof TargetStandard;
