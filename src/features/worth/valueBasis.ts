import { describedEnum } from '../../api/kit/describedEnum.js';

export const ValueBasis = describedEnum(
  'ValueBasis',
  'What sort of value was meant. The three differ, and are never mixed in one figure.',
  {
    FAIR_MARKET: 'Between a willing buyer and a willing seller, neither in haste.',
    REPLACEMENT: 'What it would take to find and buy another like it; insurers ask for this.',
    QUICK_SALE: 'What it would bring if it had to go soon.',
  },
);
export type ValueBasis = keyof typeof ValueBasis;
