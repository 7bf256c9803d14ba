import { describedEnum } from '../../api/kit/describedEnum.js';

export const TokenAllowance = describedEnum(
  'TokenAllowance',
  'What goes out through a token only if its maker said so. Serial numbers never go out this way.',
  {
    MONEY: 'Prices, costs and worth.',
    PEOPLE: 'Names of people and firms.',
    PLACES: 'Where things stand and where they came from.',
  },
);
export type TokenAllowance = keyof typeof TokenAllowance;
