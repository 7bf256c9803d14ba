import { describedEnum } from '../../api/kit/describedEnum.js';

export const ListDelimiter = describedEnum(
  'ListDelimiter',
  'What stands between the cells of a list.',
  { COMMA: 'A comma.', SEMICOLON: 'A semicolon.', TAB: 'A tabulator.' },
);
export type ListDelimiter = keyof typeof ListDelimiter;

export const delimiterMarks: Readonly<Record<ListDelimiter, string>> = {
  COMMA: ',',
  SEMICOLON: ';',
  TAB: '\t',
};
