import { one } from '../../api/kit/relations.js';
import type { Relation, Row, TypeReads } from '../../api/kit/typeReads.js';
import { chainOf, collectionItself } from './chainOf.js';
import { custody } from './custody.reads.js';
import { datesOf, idOf } from './datesOf.js';
import { readProvenanceFacts } from './provenanceFacts.reads.js';
import type { SerialDate } from '../../domain/provenance/serialDate.js';

const day = (nowMs: number): string => new Date(nowMs).toISOString().slice(0, 10);

/** Who held each item, and what is not accounted for. */
const chain: Relation = async ({ database: { reader }, nowMs }, groups) => {
  const facts = await readProvenanceFacts(
    reader,
    groups.map(({ id }) => id),
  );
  const rows = new Map(
    facts.map((one): [string, Row] => {
      const { held, coverage, overlaps } = chainOf(one, day(nowMs));
      const owner = one.ownerId ?? collectionItself;
      const holdings = held.map(({ partyId, from, until, end }, index) => ({
        id: `${one.item.id}/${index}`,
        partyId: partyId === collectionItself ? null : partyId,
        isOwnCollection: partyId === owner,
        cameEarliestOn: from?.earliest ?? null,
        cameLatestOn: from?.latest ?? null,
        wentEarliestOn: until?.earliest ?? null,
        wentLatestOn: until?.latest ?? null,
        end,
      }));
      const {
        from: coveredFrom = null,
        certainShare = null,
        possibleShare = null,
      } = coverage ?? {};
      const gaps = coverage?.gaps ?? [];
      return [
        one.item.id,
        {
          id: one.item.id,
          coveredFrom,
          certainShare,
          possibleShare,
          gaps,
          holdings,
          overlaps: overlaps.map((overlap) => ({
            id: `${one.item.id}/${overlap.from}`,
            ...overlap,
          })),
        },
      ];
    }),
  );
  const values = groups.map(({ id }) => rows.get(id) ?? null);
  return { values, children: [...rows.values()], childType: 'ProvenanceChain' };
};

const dates: Relation = async ({ database: { reader }, nowMs }, groups) => {
  const facts = await readProvenanceFacts(
    reader,
    groups.map(({ id }) => id),
  );
  const found = new Map(facts.map((one) => [one.item.id, shownDates(one, day(nowMs))]));
  return { values: groups.map(({ id }) => found.get(id) ?? null), children: [], childType: null };
};

export const chainRelationsOfProvenance: Record<string, Relation> = { chain, dates };

export const provenanceChainReads: TypeReads = {
  typeName: 'ProvenanceChain',
  byIds: () => Promise.resolve([]),
  relations: {
    holdings: (_context, chains) => {
      const values = chains.map((row) => row['holdings'] as Row[]);
      return Promise.resolve({ values, children: values.flat(), childType: 'Holding' });
    },
    overlaps: (_context, chains) => {
      const values = chains.map((row) => row['overlaps'] as Row[]);
      return Promise.resolve({ values, children: values.flat(), childType: 'HoldingOverlap' });
    },
    custody,
  },
};

export const holdingReads: TypeReads = {
  typeName: 'Holding',
  byIds: () => Promise.resolve([]),
  relations: { holder: one('Party', 'partyId') },
};

export const holdingOverlapReads: TypeReads = {
  typeName: 'HoldingOverlap',
  byIds: () => Promise.resolve([]),
  relations: {
    holders: async (context, overlaps) => {
      const idsOf = (row: Row) =>
        (row['partyIds'] as string[]).filter((id) => id !== collectionItself);
      const ids = [...new Set(overlaps.flatMap(idsOf))];
      const children = (await context.reads.get('Party')?.byIds(context, ids)) ?? [];
      const byId = new Map(children.map((row) => [row.id, row]));
      const values = overlaps.map((row) => idsOf(row).flatMap((id) => byId.get(id) ?? []));
      return { values, children, childType: 'Party' };
    },
  },
};

function shownDates(facts: Parameters<typeof datesOf>[0], today: string) {
  const { making, codes, conflict, statementCount, serial, parts } = datesOf(facts, today);
  const findings = new Map(codes.map((code) => [code.id, code]));
  return {
    making,
    statementCount,
    conflict: conflict.map(({ words }) => ({ statement: words })),
    codes: parts.map((part) => {
      const found = findings.get(idOf(part));
      return { ...part, possible: found?.possible ?? [], repair: found?.repair ?? null };
    }),
    serial: serial === null ? null : shownSerial(serial),
  };
}

function shownSerial(serial: SerialDate) {
  const nothing = { why: null, bracket: null, estimate: null, spreadDays: null };
  switch (serial.kind) {
    case 'NONE':
      return { ...nothing, state: serial.kind, why: serial.why, serialNumbers: [] };
    case 'OUT_OF_ORDER': {
      const why = 'The one with the lower number is dated later than the one with the higher.';
      return { ...nothing, state: serial.kind, why, serialNumbers: serial.serialNumbers };
    }
    case 'DATED': {
      const { earliest, latest, estimate, spreadDays, neighbours } = serial;
      const bracket = { earliest, latest };
      return {
        ...nothing,
        state: serial.kind,
        bracket,
        estimate,
        spreadDays,
        serialNumbers: neighbours,
      };
    }
  }
}
