import { listParameter } from '../../db/dialect.js';
import type { RowSource } from '../../db/rowSource.js';
import { readProvenanceFacts, type ProvenanceFacts } from '../provenance/provenanceFacts.reads.js';

export interface ProvParty {
  id: string;
  kind: 'PERSON' | 'ORGANISATION';
  name: string;
}
export interface ProvEvidence {
  id: string;
  eventId: string;
  bearing: string;
  kind: string;
  strength: string;
  description: string;
  keptAt: string | null;
}
export interface ProvRole {
  id: string;
  eventId: string;
  partyId: string;
  role: string;
}

/** Everything that a PROV document of one item says. */
export interface ProvFacts extends ProvenanceFacts {
  parties: ProvParty[];
  evidence: ProvEvidence[];
  roles: ProvRole[];
}

/** The facts of any number of items, with a fixed number of statements. */
export async function readProvFacts(
  source: RowSource,
  itemIds: readonly string[],
): Promise<ProvFacts[]> {
  const all = await readProvenanceFacts(source, itemIds);
  const { rows, dialect } = source;
  const eventIds = [listParameter(all.flatMap(({ events }) => events.map(({ id }) => id)))];
  const roles = await rows<ProvRole>(
    `SELECT id AS "id", event_id AS "eventId", party_id AS "partyId", role AS "role"
     FROM event_party WHERE ${dialect.isAnyOf('event_id')} ORDER BY id`,
    eventIds,
  );
  const evidence = await rows<ProvEvidence>(
    `SELECT id AS "id", event_id AS "eventId", bearing AS "bearing", kind AS "kind",
       strength AS "strength", description AS "description", kept_at AS "keptAt"
     FROM evidence WHERE withdrawn_at IS NULL AND ${dialect.isAnyOf('event_id')} ORDER BY id`,
    eventIds,
  );
  const named = all.map((facts) => namedIn(facts, roles));
  const parties = await rows<ProvParty>(
    `SELECT id AS "id", kind AS "kind", name AS "name" FROM party
     WHERE ${dialect.isAnyOf('id')} ORDER BY id`,
    [listParameter([...new Set(named.flatMap((ids) => [...ids]))])],
  );
  return all.map((facts, index) => {
    const own = new Set(facts.events.map(({ id }) => id));
    return {
      ...facts,
      roles: roles.filter(({ eventId }) => own.has(eventId)),
      evidence: evidence.filter(({ eventId }) => own.has(eventId)),
      parties: parties.filter(({ id }) => named[index]?.has(id)),
    };
  });
}

function namedIn(facts: ProvenanceFacts, roles: readonly ProvRole[]): Set<string> {
  const own = new Set(facts.events.map(({ id }) => id));
  const ids = [
    ...facts.events.flatMap(({ fromPartyId, toPartyId }) => [fromPartyId, toPartyId]),
    ...[...facts.acquisitions, ...facts.disposals].map(({ partyId }) => partyId),
    ...roles.filter(({ eventId }) => own.has(eventId)).map(({ partyId }) => partyId),
    facts.ownerId,
  ];
  return new Set(ids.filter((id) => id !== null));
}
