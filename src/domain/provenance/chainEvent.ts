import type { DayRange } from '../dates/compareDates.js';

/** A happening that may hand a thing on from one holder to another. */
export interface ChainEvent extends DayRange {
  readonly eventId: string;
  readonly kind: ChainEventKind;
  readonly fromPartyId: string | null;
  readonly toPartyId: string | null;
}

/** Only what bears on who holds it; what else happened is not part of the chain. */
export type ChainEventKind = 'START' | 'TRANSFER' | 'LOSS';

/** Somebody held the thing from one event until another. */
export interface Holding {
  /** Null: nobody knows who. */
  readonly partyId: string | null;
  /** The event by which it came; null when that is not recorded. */
  readonly from: ChainEvent | null;
  /** The event by which it went; null while it is held, or when that is not recorded. */
  readonly until: ChainEvent | null;
  /** GIVEN_UP is implied where the event does not name who gave it up: likely, not recorded. */
  readonly end: 'GIVEN_UP' | 'GIVEN_UP_IMPLIED' | 'STILL_HELD' | 'NOT_RECORDED';
}
