import type { LocalDate } from '../dates/localDate.js';

/** When an event may have been at all, from its EDTF text; null: no bound on that side. */
export interface EventDates {
  readonly eventId: string;
  readonly earliest: LocalDate | null;
  readonly latest: LocalDate | null;
}

export interface EventYearProblem {
  readonly code: 'BEFORE_FIRST_YEAR_MADE';
  readonly message: string;
  readonly eventIds: readonly string[];
}

/**
 * Provenance events that surely lie before the first year the model was made: their latest possible
 * day is earlier than that year. An event that merely may be earlier contradicts nothing.
 * @param firstYearMade null when it is not recorded; then nothing can be said
 */
export function eventYears(
  events: readonly EventDates[],
  firstYearMade: number | null,
): EventYearProblem[] {
  if (firstYearMade === null) return [];
  return events.flatMap((event) => {
    if (event.latest === null || !(yearOf(event.latest) < firstYearMade)) return [];
    return [
      {
        code: 'BEFORE_FIRST_YEAR_MADE' as const,
        message:
          `This event ended by ${event.latest}, but the model was first made in ${firstYearMade}: ` +
          'the date, the model or the identity of the set is mistaken.',
        eventIds: [event.eventId],
      },
    ];
  });
}

/** NaN when unreadable. Years before 0 and past 9999 occur in EDTF: text order would not do. */
function yearOf(date: LocalDate): number {
  return Number(/^[+-]?\d+(?=-\d{2}-\d{2}$)/.exec(date)?.[0]);
}
