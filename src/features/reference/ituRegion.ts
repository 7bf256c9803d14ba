import { describedEnum } from '../../api/kit/describedEnum.js';

export const ItuRegion = describedEnum(
  'ItuRegion',
  'One of the three regions for which the ITU allocates frequencies.',
  {
    REGION_1: 'Europe, Africa, the Middle East west of the Persian Gulf, and northern Asia.',
    REGION_2: 'The Americas and Greenland.',
    REGION_3: 'The rest of Asia, Australia and the Pacific.',
  },
);
export type ItuRegion = keyof typeof ItuRegion;
