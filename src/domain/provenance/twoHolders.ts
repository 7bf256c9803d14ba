import type { ChainEvent } from './chainEvent.js';

export interface TwoHoldersProblem {
  readonly code: 'TWO_HOLDERS';
  readonly message: string;
  readonly eventIds: readonly string[];
}

interface FirmHolding {
  readonly partyId: string;
  readonly came: ChainEvent;
  readonly went: ChainEvent;
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

/** From each coming to the next going of the same person, with no other coming in between. */
function firmHoldings(events: readonly ChainEvent[]): FirmHolding[] {
  return events.flatMap((came) => {
    const partyId = came.toPartyId;
    if (partyId === null || came.kind === 'LOSS') return [];
    const goings = events.filter(
      (event) => event.fromPartyId === partyId && isSurelyBefore(came, event),
    );
    const went = goings.find((event) =>
      goings.every((one) => one === event || !isSurelyBefore(one, event)),
    );
    return went ? [{ partyId, came, went }] : [];
  });
}

const isSurelyBefore = (one: ChainEvent, other: ChainEvent): boolean =>
  one.latest !== null && other.earliest !== null && one.latest < other.earliest;
