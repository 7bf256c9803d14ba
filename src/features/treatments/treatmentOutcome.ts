import { describedEnum } from '../../api/kit/describedEnum.js';

export const TreatmentOutcome = describedEnum('TreatmentOutcome', 'How a treatment came out.', {
  WORKED: 'It did what it was for.',
  WORKED_IN_PART: 'It helped, and something is left to do.',
  NO_EFFECT: 'It changed nothing.',
  HARMED: 'It did damage.',
  UNDECIDED: 'It cannot be said yet.',
});
export type TreatmentOutcome = keyof typeof TreatmentOutcome;
