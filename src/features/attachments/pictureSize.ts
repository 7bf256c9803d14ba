import { describedEnum } from '../../api/kit/describedEnum.js';

export const PictureSizeWord = describedEnum(
  'PictureSize',
  'How large a picture is wanted; never larger than the original.',
  {
    SMALL: 'At most 240 pixels on the longer side, for lists.',
    MEDIUM: 'At most 800 pixels on the longer side.',
    LARGE: 'At most 2000 pixels on the longer side.',
  },
);
