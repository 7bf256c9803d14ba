import { describedEnum } from '../../api/kit/describedEnum.js';

export const ReadingTier = describedEnum(
  'ReadingTier',
  'Where a reading was taken. A tester can reject a part; only the circuit proves it.',
  {
    TESTER: 'On a tester or bridge, out of the set.',
    IN_CIRCUIT: 'In the set, under its own voltages.',
  },
);
export type ReadingTier = keyof typeof ReadingTier;
