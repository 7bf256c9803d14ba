import type { ChainEvent, Holding } from './chainEvent.js';

/**
 * Who held a thing, one after another. Where the one who gives it up is not the one who held it
 * last, how it came from one to the other is not recorded: both holdings are open there.
 */
export function holdings(events: readonly ChainEvent[]): Holding[] {
  const chain = inOrder(events);
  const found: Holding[] = [];
  let open: ChainEvent | null = null;
  for (const event of chain) {
    const partyId: string | null = open?.toPartyId ?? null;
    if (event.fromPartyId !== null && partyId !== event.fromPartyId) {
      if (open) found.push({ partyId, from: open, until: null, end: 'NOT_RECORDED' });
      found.push({ partyId: event.fromPartyId, from: null, until: event, end: 'GIVEN_UP' });
    } else if (open) {
      const isNamed = event.fromPartyId !== null || event.kind === 'LOSS';
      const end = isNamed ? 'GIVEN_UP' : 'GIVEN_UP_IMPLIED';
      found.push({ partyId, from: open, until: event, end });
    }
    open = event.kind === 'LOSS' ? null : event;
  }
  if (open) found.push({ partyId: open.toPartyId, from: open, until: null, end: 'STILL_HELD' });
  return found;
}

/** By date; undated ones beside the event that names the same person, else at the end. */
export function inOrder(events: readonly ChainEvent[]): ChainEvent[] {
  const keyOf = ({ earliest, latest }: ChainEvent): string => earliest ?? latest ?? '';
  const dated = events
    .filter((event) => keyOf(event) !== '')
    .sort((one, other) => compare(keyOf(one), keyOf(other)) || compare(endOf(one), endOf(other)));
  const chain = [...dated];
  for (const event of events.filter((one) => keyOf(one) === '')) {
    const before = chain.findLastIndex(
      ({ toPartyId }) => toPartyId !== null && toPartyId === event.fromPartyId,
    );
    const after = chain.findIndex(
      ({ fromPartyId }) => fromPartyId !== null && fromPartyId === event.toPartyId,
    );
    const starts = event.kind === 'START' ? 0 : chain.length;
    chain.splice(before >= 0 ? before + 1 : after >= 0 ? after : starts, 0, event);
  }
  return chain;
}

const endOf = ({ latest }: ChainEvent): string => latest ?? '9999-12-31';
const compare = (one: string, other: string): number => (one < other ? -1 : one > other ? 1 : 0);
