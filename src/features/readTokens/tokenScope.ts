import { describedEnum } from '../../api/kit/describedEnum.js';

export const TokenScope = describedEnum('TokenScope', 'Which ways out a token opens.', {
  FIGURES: 'The figures of the collection at /metrics.',
  EVENTS: 'The feed of what happened at /feeds/events.json.',
  CALENDAR: 'The calendars below /calendars.',
  DOCUMENTS: 'The published documents below /documents.',
});
export type TokenScope = keyof typeof TokenScope;
