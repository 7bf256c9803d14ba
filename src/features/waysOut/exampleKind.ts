import { describedEnum } from '../../api/kit/describedEnum.js';

export const WayOutExampleKind = describedEnum('WayOutExampleKind', 'What an example shows.', {
  FIGURES: 'All figures.',
  EVENTS: 'The latest events.',
  EVENTS_IN_ADDRESS: 'The latest events, for a reader that can send no headers.',
  DUE: 'What falls due, for a calendar that subscribes to an address.',
  SESSIONS: 'Sessions at the bench in some days.',
  DOCUMENT_BY_NAME: 'A document by its name.',
  DOCUMENT_BY_DIGEST: 'A document by its digest: nobody can have changed it since.',
  DOCUMENT_WITH_VARIABLES: 'A document with values of its own for its variables.',
});
export type WayOutExampleKind = keyof typeof WayOutExampleKind;
