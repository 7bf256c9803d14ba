import { describedEnum } from '../../api/kit/describedEnum.js';

export const AllocationStatus = describedEnum(
  'AllocationStatus',
  'How the amateur service stands in a band towards other services.',
  {
    PRIMARY: 'It is a primary service there, alone or with others.',
    SECONDARY: 'It must not disturb primary services there, and must bear with them.',
  },
);
export type AllocationStatus = keyof typeof AllocationStatus;
