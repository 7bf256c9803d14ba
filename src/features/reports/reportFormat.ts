import { describedEnum } from '../../api/kit/describedEnum.js';

export const ReportFormat = describedEnum('ReportFormat', 'How a report is written.', {
  MARKDOWN: 'Markdown: CommonMark, with pipe tables.',
  HTML: 'One page of HTML that needs nothing else and runs no script.',
});
export type ReportFormat = keyof typeof ReportFormat;
