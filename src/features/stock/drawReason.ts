import { describedEnum } from '../../api/kit/describedEnum.js';

export const DrawReason = describedEnum('DrawReason', 'Why units left a lot of spares.', {
  FITTED: 'Fitted in an item.',
  CONSUMED: 'Used up in work: wire, grease, screws.',
  DISCARDED: 'Thrown away, after local rules for its matter.',
  PASSED_ON: 'Sold, swapped or given away.',
  MISSING: 'Not found when the shelf was counted.',
});
export type DrawReason = keyof typeof DrawReason;
