import type { ChainEvent, ChainEventKind, Holding } from '../../domain/provenance/chainEvent.js';
import { chainCoverage, type ChainCoverage } from '../../domain/provenance/chainCoverage.js';
import { holdingOverlaps, type HoldingOverlap } from '../../domain/provenance/holdingOverlaps.js';
import { holdings } from '../../domain/provenance/holdings.js';
import { twoHolders, type TwoHoldersProblem } from '../../domain/provenance/twoHolders.js';
import { edtfRange } from './edtfRange.js';
import type { FactHandover, ProvenanceFacts } from './provenanceFacts.reads.js';
import type { ProvenanceEventKind } from './provenanceEventKind.js';

export interface Chain {
  held: Holding[];
  coverage: ChainCoverage | null;
  problems: TwoHoldersProblem[];
  overlaps: HoldingOverlap[];
  /** Events that the evidence speaks against: they form no link. */
  setAside: number;
}

/** Who holds it for the collection where nobody is named as its owner. */
export const collectionItself = 'the collection';

const kinds: Partial<Record<ProvenanceEventKind, ChainEventKind>> = {
  MADE: 'START',
  ASSEMBLED: 'START',
  SOLD: 'TRANSFER',
  GIFTED: 'TRANSFER',
  INHERITED: 'TRANSFER',
  FOUND: 'TRANSFER',
  LOST: 'LOSS',
};

/** The chain of holders of an item, from its events, its purchase and its disposal. */
export function chainOf(facts: ProvenanceFacts, today: string): Chain {
  const { events, confidences, acquisitions, disposals } = facts;
  const owner = facts.ownerId ?? collectionItself;
  const counted = events.filter(({ id }) => confidences.get(id)?.level !== 'CONTRADICTED');
  const links = counted.flatMap((event): ChainEvent[] => {
    const kind = kinds[event.kind];
    if (!kind) return [];
    const { id: eventId, earliestOn, latestOn, fromPartyId, toPartyId } = event;
    return [{ eventId, kind, earliest: earliestOn, latest: latestOn, fromPartyId, toPartyId }];
  });
  const isSame = (day: string) => (link: ChainEvent) =>
    link.toPartyId === owner && link.latest !== null && link.latest >= day;
  const handover = (
    { id, on }: FactHandover,
    from: string | null,
    to: string | null,
  ): ChainEvent => ({
    eventId: id,
    kind: 'TRANSFER',
    earliest: on,
    latest: on,
    fromPartyId: from,
    toPartyId: to,
  });
  const own = [
    // A purchase that is an event as well is one link, not two.
    ...acquisitions
      .filter(({ on }) => !links.some(isSame(on)))
      .map((one) => handover(one, one.partyId, owner)),
    ...disposals.map((one) => handover(one, owner, one.partyId)),
  ];
  const chain = [...links, ...own];
  const held = holdings(chain);
  const from = startOf(facts, chain);
  return {
    held,
    coverage: from === null ? null : chainCoverage(held, from, today),
    problems: twoHolders(chain),
    overlaps: holdingOverlaps(chain),
    setAside: events.length - counted.length,
  };
}

/** When it was made at the latest; else the first year of the model, else the first that is known. */
function startOf({ item, events }: ProvenanceFacts, chain: readonly ChainEvent[]): string | null {
  const made = events.find(({ kind }) => kind === 'MADE') ?? null;
  const written = item.madeEdtf === null ? null : edtfRange(item.madeEdtf);
  const onRecord = written?.kind === 'range' ? written.latestOn : null;
  const known = made?.latestOn ?? onRecord;
  if (known !== null) return known;
  if (item.firstYearMade !== null) return `${item.firstYearMade}-12-31`;
  const first = chain.flatMap(({ earliest, latest }) => earliest ?? latest ?? []).sort()[0];
  return first ?? null;
}
