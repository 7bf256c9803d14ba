import type { Hiding } from '../dossier/hidingOf.js';
import { shownItem } from '../items/shownItem.js';
import { moneyAmount } from '../money/moneyAmount.js';
import type { TokenAllowance } from '../readTokens/tokenAllowance.js';
import type { EventKind } from './eventKind.js';
import type { EventRow } from './eventSource.js';

export interface ToldEvent {
  title: string;
  text: string;
}

export interface EventTelling {
  shows: ReadonlySet<TokenAllowance>;
  hiding: Hiding;
  /** Net hours of sessions, by session. */
  hours: ReadonlyMap<string, number>;
}

const words = (code: string | null): string => (code ?? '').toLowerCase().replaceAll('_', ' ');

type Telling = (event: EventRow, telling: EventTelling) => string;

const whatHappened: Record<EventKind, Telling> = {
  SESSION_FINISHED: ({ id, subject }, { hours }) =>
    `${hours.get(id) ?? 0} h at the bench, ${subject ?? 'on the whole'}`,
  TASK_FINISHED: ({ subject, detail }) => `“${subject ?? ''}” is done (${detail ?? ''})`,
  PART_FITTED: ({ subject, detail }) => `${subject ?? 'a part'} fitted in ${detail ?? ''}`,
  PART_REMOVED: ({ subject, detail }) => `${subject ?? 'a part'} taken out of ${detail ?? ''}`,
  SET_ACQUIRED: () => 'came in',
  CHECK_PASSED: ({ subject }) => `check passed: ${subject ?? ''}`,
  CHECK_FAILED: ({ subject }) => `check failed: ${subject ?? ''}`,
  HAZARD_RAISED: ({ subject }) => `hazard found: ${words(subject)}`,
  HAZARD_CLEARED: ({ subject }) => `hazard cleared: ${words(subject)}`,
  MAINTENANCE_DONE: ({ subject }) => `maintenance done: ${subject ?? ''}`,
  RESTORATION_COMPLETED: ({ subject }) => `restoration completed: ${subject ?? ''}`,
  LENT: ({ detail }) => (detail === 'IN' ? 'lent to us' : 'lent out'),
  BACK_FROM_LOAN: ({ detail }) => (detail === 'IN' ? 'went back to whose it is' : 'came back'),
  PARTED_WITH: ({ detail }) => `left the collection (${words(detail)})`,
};

/** An event in words, with what the token shows and nothing else. */
export function tellEvent(event: EventRow, telling: EventTelling): ToldEvent {
  const { shows, hiding } = telling;
  const { inventoryNumber, itemName, kind, detail, person, place, minorUnits, currency } = event;
  const item = shownItem({ inventoryNumber, name: itemName });
  const title = hiding(`${item}: ${whatHappened[kind](event, telling)}`);
  const more = [
    kind === 'HAZARD_CLEARED' && detail !== null && hiding(`Check: ${detail}`),
    shows.has('PEOPLE') && person !== null && `Person: ${person}`,
    shows.has('PLACES') && place !== null && `Place: ${place}`,
    shows.has('MONEY') &&
      minorUnits !== null &&
      currency !== null &&
      `${kind === 'SET_ACQUIRED' ? 'Price of the lot' : 'Price'}: ${moneyAmount(minorUnits, currency).amount} ${currency}`,
  ].filter((line) => line !== false);
  return { title, text: [title, ...more].join('\n') };
}
