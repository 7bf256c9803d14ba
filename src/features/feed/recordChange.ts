import { describedEnum } from '../../api/kit/describedEnum.js';

export const RecordChange = describedEnum('RecordChange', 'What became of a record.', {
  ADDED: 'It is new.',
  CHANGED: 'It says something else than before.',
  REMOVED: 'A link was taken away; the history keeps it.',
});
export type RecordChange = keyof typeof RecordChange;
