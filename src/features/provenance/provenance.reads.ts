import type { Basis } from '../../api/kit/basis.type.js';
import type { Relation, Row, TypeReads } from '../../api/kit/typeReads.js';
import { provRelationsOfProvenance } from '../provExport/prov.reads.js';
import { chainRelationsOfProvenance } from './chain.reads.js';
import { claimsOf } from './claim.reads.js';
import { readContradictions } from './contradictions.reads.js';
import { eventsByDate } from './provenanceEvent.reads.js';

/** A group of fields of an item: its row holds the item's id and nothing else. */
export const provenanceReads: TypeReads = {
  typeName: 'Provenance',
  // A group is no node: it cannot be asked for by an id.
  byIds: () => Promise.resolve([]),
  relations: {
    events: eventsByDate,
    ...chainRelationsOfProvenance,
    ...provRelationsOfProvenance,
    contradictions: async ({ database: { reader }, nowMs }, groups) => {
      const found = await readContradictions(reader, idsOf(groups), dayOf(nowMs));
      const values = groups.map(({ id }) => found.get(id)?.contradictions ?? []);
      return { values, children: values.flat(), childType: 'Contradiction' };
    },
    basis: async ({ database: { reader }, nowMs }, groups) => {
      const found = await readContradictions(reader, idsOf(groups), dayOf(nowMs));
      const values = groups.map(({ id }) => basisOf(found.get(id)?.eventCount ?? 0, nowMs));
      return { values, children: [], childType: null };
    },
  },
};

export const contradictionReads: TypeReads = {
  typeName: 'Contradiction',
  byIds: () => Promise.resolve([]),
  relations: {
    events: async (context, contradictions) => {
      const wanted = contradictions.map((row) => row['eventIds'] as readonly string[]);
      const ids = [...new Set(wanted.flat())];
      const events = (await context.reads.get('ProvenanceEvent')?.byIds(context, ids)) ?? [];
      const byId = new Map(events.map((event) => [event.id, event]));
      const values = wanted.map((eventIds) => eventIds.flatMap((id) => byId.get(id) ?? []));
      return { values, children: events, childType: 'ProvenanceEvent' };
    },
  },
};

/** What the past adds to an item. */
export const provenanceRelationsOfItem: Record<string, Relation> = {
  claims: claimsOf('item_id'),
  provenance: (_context, items) => {
    const groups = items.map(({ id }): Row => ({ id }));
    return Promise.resolve({ values: groups, children: groups, childType: 'Provenance' });
  },
};

const dayOf = (nowMs: number): string => new Date(nowMs).toISOString().slice(0, 10);

const idsOf = (rows: readonly Row[]): string[] => rows.map(({ id }) => id);

const basisOf = (eventCount: number, nowMs: number): Basis => ({
  method:
    'The days that each date allows are compared with the first year in which the model was made ' +
    'and with the making of the item. Only what cannot be on any of these days is a contradiction.',
  counted: [{ what: 'provenance events', count: eventCount }],
  assumptions: [
    'A date marked ~, ? or % may be off by one year, month or day, as precise as it is written.',
  ],
  asOf: new Date(nowMs).toISOString(),
});
