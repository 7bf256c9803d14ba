import type { ChainEvent } from './chainEvent.js';
import { firmHoldings, isSurelyBefore } from './firmHoldings.js';

export interface TwoHoldersProblem {
  readonly code: 'TWO_HOLDERS';
  readonly message: string;
  readonly eventIds: readonly string[];
}

/**
 * Times in which two people would have held a thing at once: somebody surely had it from one event
 * to another, and in between it went from or to others only, whatever the true dates are.
 */
export function twoHolders(events: readonly ChainEvent[]): TwoHoldersProblem[] {
  return firmHoldings(events).flatMap(({ partyId, came, went }) =>
    events.flatMap((event): TwoHoldersProblem[] => {
      const others = [event.fromPartyId, event.toPartyId].filter((one) => one !== null);
      if (others.length === 0 || others.includes(partyId)) return [];
      if (!isSurelyBefore(came, event) || !isSurelyBefore(event, went)) return [];
      return [
        {
          code: 'TWO_HOLDERS',
          message:
            `By two events one person had it from ${came.latest ?? ''} until ${went.earliest ?? ''}, ` +
            'but by a third event it changed hands between others in that time: one of the three, ' +
            'or the identity of the thing, is mistaken, or events are missing.',
          eventIds: [came.eventId, event.eventId, went.eventId],
        },
      ];
    }),
  );
}
