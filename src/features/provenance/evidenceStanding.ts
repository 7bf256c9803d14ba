import { describedEnum } from '../../api/kit/describedEnum.js';

export const EvidenceStanding = describedEnum(
  'EvidenceStanding',
  'What a statement about the past rests on.',
  {
    CLAIM: 'Somebody said so.',
    SUPPORTED: 'Evidence bears it out.',
    CONTRADICTED: 'Evidence speaks against it.',
  },
);
export type EvidenceStanding = keyof typeof EvidenceStanding;
