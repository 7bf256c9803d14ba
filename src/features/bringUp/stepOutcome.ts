import { describedEnum } from '../../api/kit/describedEnum.js';

export const StepOutcome = describedEnum('StepOutcome', 'How a step of a bring-up came out.', {
  NOT_DONE: 'Nothing is recorded of it.',
  PASSED: 'Every statement holds, and no reading breaks a limit.',
  FAILED: 'A statement does not hold, or a reading breaks a limit.',
});
export type StepOutcome = keyof typeof StepOutcome;
