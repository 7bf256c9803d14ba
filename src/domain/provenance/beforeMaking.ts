import type { LocalDate } from '../dates/localDate.js';
import type { EventDates } from './eventYears.js';

export interface BeforeMakingProblem {
  readonly code: 'BEFORE_MAKING';
  readonly message: string;
  /** The event, and the making where that is an event too. */
  readonly eventIds: readonly string[];
}

/** When a thing was made, by an event or by what is written on its own record. */
export interface Making {
  /** Null for a date on the thing's own record. */
  readonly eventId: string | null;
  readonly earliest: LocalDate | null;
}

/**
 * Events of a thing that surely ended before it was made: nothing can happen to it until then. What
 * merely may have been earlier contradicts nothing.
 */
export function beforeMaking(
  events: readonly EventDates[],
  makings: readonly Making[],
): BeforeMakingProblem[] {
  return makings.flatMap((making) =>
    events.flatMap((event) => {
      const { earliest } = making;
      if (earliest === null || event.latest === null || event.eventId === making.eventId) return [];
      if (!(event.latest < earliest)) return [];
      return [
        {
          code: 'BEFORE_MAKING' as const,
          message:
            `This event ended by ${event.latest}, but the thing was made on ${earliest} at the ` +
            'earliest: one of the two dates, or the identity of the thing, is mistaken.',
          eventIds: [event.eventId, ...(making.eventId === null ? [] : [making.eventId])],
        },
      ];
    }),
  );
}
