import { describedEnum } from '../../api/kit/describedEnum.js';

export const ProgressEvidenceKind = describedEnum(
  'ProgressEvidenceKind',
  'What shows that a stated share of a task is done.',
  {
    NOTE: 'A sentence: "11 of 14 capacitors replaced".',
    READING: 'A reading taken on the item or on a part in it.',
    PHOTOGRAPH: 'A photograph of the work, the item or a part in it.',
  },
);
export type ProgressEvidenceKind = keyof typeof ProgressEvidenceKind;
