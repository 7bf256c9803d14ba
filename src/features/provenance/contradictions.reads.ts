import { listParameter } from '../../db/dialect.js';
import { groupedBy } from '../../db/groupedBy.js';
import type { RowSource } from '../../db/rowSource.js';
import { beforeMaking } from '../../domain/provenance/beforeMaking.js';
import { eventYears } from '../../domain/provenance/eventYears.js';
import { edtfRange } from './edtfRange.js';
import type { ProvenanceEventKind } from './provenanceEventKind.js';

export interface ContradictionRow {
  id: string;
  code: string;
  message: string;
  eventIds: readonly string[];
  [field: string]: unknown;
}

interface EventRow {
  eventId: string;
  itemId: string;
  kind: ProvenanceEventKind;
  earliest: string | null;
  latest: string | null;
}
interface ItemRow {
  id: string;
  madeEdtf: string | null;
  firstYearMade: number | null;
}

/** What cannot be in the provenance of each item, and how many events were compared. */
export async function readContradictions(
  { rows, dialect }: RowSource,
  itemIds: readonly string[],
): Promise<Map<string, { eventCount: number; contradictions: ContradictionRow[] }>> {
  const ids = [listParameter(itemIds)];
  const events = await rows<EventRow>(
    `SELECT id AS "eventId", item_id AS "itemId", kind AS "kind", earliest_on AS "earliest",
       latest_on AS "latest"
     FROM provenance_event WHERE ${dialect.isAnyOf('item_id')} ORDER BY id`,
    ids,
  );
  const items = await rows<ItemRow>(
    `SELECT item.id AS "id", item.made_edtf AS "madeEdtf",
       model.first_year_made AS "firstYearMade"
     FROM item LEFT JOIN model ON model.id = item.model_id
     WHERE ${dialect.isAnyOf('item.id')}`,
    ids,
  );
  const byItem = groupedBy(events, (event) => event.itemId);
  return new Map(
    items.map((item) => {
      const own = byItem.get(item.id) ?? [];
      return [item.id, { eventCount: own.length, contradictions: contradictionsOf(item, own) }];
    }),
  );
}

function contradictionsOf(item: ItemRow, events: readonly EventRow[]): ContradictionRow[] {
  const made = item.madeEdtf === null ? null : edtfRange(item.madeEdtf);
  const makings = [
    ...(made?.kind === 'range' ? [{ eventId: null, earliest: made.earliestOn }] : []),
    ...events.filter(({ kind }) => kind === 'MADE'),
  ];
  return [...eventYears(events, item.firstYearMade), ...beforeMaking(events, makings)].map(
    ({ code, message, eventIds }, index) => ({
      id: `${item.id}/${index}`,
      code,
      message,
      eventIds,
    }),
  );
}
