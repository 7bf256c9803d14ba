import { describedEnum } from '../../api/kit/describedEnum.js';

export const FindingStatus = describedEnum('FindingStatus', 'What has become of a finding.', {
  OPEN: 'Nothing has been decided.',
  ACCEPTED: 'It stays as it is, knowingly.',
  RESOLVED: 'It has been put right.',
});
export type FindingStatus = keyof typeof FindingStatus;
