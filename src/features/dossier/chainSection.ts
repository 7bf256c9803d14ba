import { listParameter } from '../../db/dialect.js';
import type { Reader } from '../../db/reader.js';
import type { Holding } from '../../domain/provenance/chainEvent.js';
import type { ChainGap } from '../../domain/provenance/chainCoverage.js';
import { chainOf, collectionItself } from '../provenance/chainOf.js';
import { readContradictions } from '../provenance/contradictions.reads.js';
import { readProvenanceFacts } from '../provenance/provenanceFacts.reads.js';
import {
  inWords,
  section,
  withheldWord,
  type DossierSection,
  type DossierWithholding,
} from './dossierDocument.js';
import type { DossierItem } from './dossierItem.js';

/**
 * Who held it when, with gaps shown as gaps, and what cannot be so.
 * @param until last day looked at, ISO 8601
 */
export async function chainSection(
  reader: Reader,
  item: DossierItem,
  { withheld }: DossierWithholding,
  until: string,
): Promise<DossierSection> {
  const [facts] = await readProvenanceFacts(reader, [item.id]);
  if (!facts) throw new Error(`item ${item.id} was read and is not there`);
  const { held, coverage, setAside } = chainOf(facts, until);
  const ids = held.flatMap(({ partyId }) =>
    partyId === null || partyId === collectionItself ? [] : partyId,
  );
  const parties = await reader.rows<{ id: string; name: string }>(
    `SELECT id AS "id", name AS "name" FROM party WHERE ${reader.dialect.isAnyOf('id')}`,
    [listParameter(ids)],
  );
  const nameOf = new Map(parties.map(({ id, name }) => [id, name]));
  const holder = ({ partyId }: Holding): string => {
    if (partyId === null) return 'nobody knows who';
    if (partyId === (facts.ownerId ?? collectionItself)) return 'the owner of this collection';
    return withheld.has('PEOPLE') ? withheldWord : (nameOf.get(partyId) ?? 'not recorded');
  };
  const rows = inTime([
    ...held.map((one) => ({
      at: one.from?.earliest ?? one.from?.latest ?? one.until?.earliest ?? '9999',
      cells: [
        holder(one),
        rangeWords(one.from),
        one.end === 'STILL_HELD' ? '' : rangeWords(one.until),
        inWords(one.end),
      ],
    })),
    ...(coverage?.gaps ?? []).map((gap) => ({ at: gap.from, cells: gapCells(gap) })),
  ]);
  const found = (await readContradictions(reader, [item.id], until)).get(item.id);
  const messages = [...new Set((found?.contradictions ?? []).map(({ message }) => message))];
  return section('Who held it', {
    remarks: [
      coverage === null
        ? 'Nothing is dated: who held it cannot be laid out in time.'
        : `From ${coverage.from} to ${coverage.to} it is surely accounted for on ${percent(coverage.certainShare)} of the days, possibly on ${percent(coverage.possibleShare)}.`,
      ...(setAside > 0
        ? [`${setAside} statements that evidence speaks against are left out.`]
        : []),
      ...messages.map((message) => `Contradiction: ${message}`),
    ],
    table: rows.length === 0 ? null : { columns: ['Holder', 'Came', 'Went', 'How it ended'], rows },
  });
}

const percent = (share: number): string => `${Math.floor(share * 100)} %`;

const inTime = (rows: { at: string; cells: string[] }[]): string[][] =>
  rows
    .sort((one, other) => (one.at < other.at ? -1 : Number(one.at > other.at)))
    .map(({ cells }) => cells);

function rangeWords(range: { earliest: string | null; latest: string | null } | null): string {
  if (!range || (range.earliest === null && range.latest === null)) return 'not recorded';
  const { earliest, latest } = range;
  if (earliest === latest) return earliest ?? '';
  if (earliest === null) return `by ${latest ?? ''}`;
  if (latest === null) return `from ${earliest} on`;
  const isYears = earliest.endsWith('-01-01') && latest.endsWith('-12-31');
  const [first, last] = isYears ? [earliest.slice(0, 4), latest.slice(0, 4)] : [earliest, latest];
  return first === last ? first : `between ${first} and ${last}`;
}

const gapCells = ({ from, to, daysAtLeast, daysAtMost }: ChainGap): string[] => [
  'Gap: not accounted for',
  from,
  to,
  spanWords(daysAtLeast) === spanWords(daysAtMost)
    ? spanWords(daysAtMost)
    : `${spanWords(daysAtLeast)} at least, ${spanWords(daysAtMost)} at most`,
];

const daysOfYear = 365.2425;

function spanWords(days: number): string {
  if (days === 1) return '1 day';
  return days < 2 * daysOfYear ? `${days} days` : `${Math.round(days / daysOfYear)} years`;
}
