import { describedEnum } from '../../api/kit/describedEnum.js';

export const ComponentOrigin = describedEnum(
  'ComponentOrigin',
  'Whether a component came with the set.',
  {
    ORIGINAL: 'Fitted when the set was made.',
    REPLACEMENT: 'Put in later.',
    UNKNOWN: 'Nobody can say yet.',
  },
);
export type ComponentOrigin = keyof typeof ComponentOrigin;
