import { describedEnum } from '../../api/kit/describedEnum.js';

export const PositionState = describedEnum(
  'PositionState',
  'What was found in a position of the fit-out.',
  {
    PRESENT: 'The part that belongs there, or an accepted equivalent, is there.',
    MISSING: 'Nothing is there.',
    WRONG: 'Something else is there.',
    UNKNOWN: 'Not looked at, or it could not be told.',
  },
);
export type PositionState = keyof typeof PositionState;
