import { describedEnum } from '../../api/kit/describedEnum.js';

export const BringUpStatus = describedEnum('BringUpStatus', 'How a bring-up stands.', {
  UNDER_WAY: 'Steps may be recorded.',
  STOPPED: 'A gate failed. Settle the finding that it opened, then resume.',
  ABANDONED: 'Given up for now; it may be resumed.',
  PASSED: 'Every step is passed, and the final check that it names is recorded.',
});
export type BringUpStatus = keyof typeof BringUpStatus;
