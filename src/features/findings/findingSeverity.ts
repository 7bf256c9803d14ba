import { describedEnum } from '../../api/kit/describedEnum.js';

export const FindingSeverity = describedEnum('FindingSeverity', 'How much a finding matters.', {
  COSMETIC: 'It is only seen.',
  MINOR: 'It works, but not as made.',
  MAJOR: 'A function is lost or soon will be.',
  BLOCKING: 'The set must not be used until it is settled.',
});
export type FindingSeverity = keyof typeof FindingSeverity;
