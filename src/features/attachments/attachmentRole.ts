import { describedEnum } from '../../api/kit/describedEnum.js';

export const AttachmentRole = describedEnum(
  'AttachmentRole',
  'What an attached photograph or paper is there to show.',
  {
    OVERALL: 'The whole thing, as one sees it standing there.',
    DETAIL: 'A part of it seen closely.',
    MARKING: 'A serial plate, stamp, label or other mark.',
    BEFORE: 'How it was before the work.',
    AFTER: 'How it was after the work; names the picture taken before where there is one.',
    DOCUMENT: 'A paper: bill, letter, log page, circuit diagram, report.',
  },
);
export type AttachmentRole = keyof typeof AttachmentRole;
