import type { RowSource } from '../../db/rowSource.js';
import { beforeMaking } from '../../domain/provenance/beforeMaking.js';
import { eventYears } from '../../domain/provenance/eventYears.js';
import { chainOf } from './chainOf.js';
import { datesOf } from './datesOf.js';
import { edtfRange } from './edtfRange.js';
import { readProvenanceFacts, type ProvenanceFacts } from './provenanceFacts.reads.js';

export interface ContradictionRow {
  id: string;
  code: string;
  message: string;
  eventIds: readonly string[];
  [field: string]: unknown;
}

/** What cannot be in the provenance of each item, and how many events were compared. */
export async function readContradictions(
  source: RowSource,
  itemIds: readonly string[],
  today: string,
): Promise<Map<string, { eventCount: number; contradictions: ContradictionRow[] }>> {
  const facts = await readProvenanceFacts(source, itemIds);
  return new Map(
    facts.map((one) => [
      one.item.id,
      { eventCount: one.events.length, contradictions: contradictionsOf(one, today) },
    ]),
  );
}

function contradictionsOf(facts: ProvenanceFacts, today: string): ContradictionRow[] {
  const { item, events } = facts;
  const dated = events.map(({ id, kind, earliestOn, latestOn }) => ({
    eventId: id,
    kind,
    earliest: earliestOn,
    latest: latestOn,
  }));
  const made = item.madeEdtf === null ? null : edtfRange(item.madeEdtf);
  const makings = [
    ...(made?.kind === 'range' ? [{ eventId: null, earliest: made.earliestOn }] : []),
    ...dated.filter(({ kind }) => kind === 'MADE'),
  ];
  const early = [...eventYears(dated, item.firstYearMade), ...beforeMaking(dated, makings)];
  const found = [
    ...early,
    ...chainOf(facts, today).problems,
    // What two dates alone contradict is said above, event by event.
    ...(early.length > 0 ? [] : conflictOf(facts, today)),
  ];
  return found.map(({ code, message, eventIds }, index) => ({
    id: `${item.id}/${index}`,
    code,
    message,
    eventIds,
  }));
}

function conflictOf(facts: ProvenanceFacts, today: string) {
  const { conflict } = datesOf(facts, today);
  if (conflict.length === 0) return [];
  const eventIds = new Set(facts.events.map(({ id }) => id));
  return [
    {
      code: 'CONFLICTING_DATES' as const,
      message: `These cannot all be true: ${conflict.map(({ words }) => words).join(' ')}`,
      eventIds: conflict.flatMap(({ id }) => (eventIds.has(id) ? id : [])),
    },
  ];
}
