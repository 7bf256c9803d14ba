import type { ChainEvent } from './chainEvent.js';

/** Somebody surely had it from the one event until the other. */
export interface FirmHolding {
  readonly partyId: string;
  readonly came: ChainEvent;
  readonly went: ChainEvent;
}

/** From each coming to the next going of the same person, with no other coming in between. */
export function firmHoldings(events: readonly ChainEvent[]): FirmHolding[] {
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

export const isSurelyBefore = (one: ChainEvent, other: ChainEvent): boolean =>
  one.latest !== null && other.earliest !== null && one.latest < other.earliest;
