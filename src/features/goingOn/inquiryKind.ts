import { describedEnum } from '../../api/kit/describedEnum.js';

export const InquiryKind = describedEnum('InquiryKind', 'How more can be found out.', {
  TEST: 'A test at the bench.',
  INSPECTION: 'A closer look, perhaps by somebody else.',
  QUOTATION: 'A price asked of somebody who would do or sell it.',
});
export type InquiryKind = keyof typeof InquiryKind;
