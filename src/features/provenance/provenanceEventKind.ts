import { describedEnum } from '../../api/kit/describedEnum.js';

export const ProvenanceEventKind = describedEnum(
  'ProvenanceEventKind',
  'What happened to an item.',
  {
    MADE: 'It was made.',
    ASSEMBLED: 'It was built from a kit or from parts.',
    SOLD: 'It was sold.',
    GIFTED: 'It was given away.',
    INHERITED: 'It passed on at a death.',
    LENT: 'It was lent.',
    STORED: 'It was put away.',
    SHOWN: 'It was on show.',
    ALTERED: 'It was changed from what it was.',
    REPAIRED: 'It was repaired.',
    LOST: 'It was lost or stolen.',
    FOUND: 'It turned up.',
    USED: 'It was on the air.',
  },
);
export type ProvenanceEventKind = keyof typeof ProvenanceEventKind;
