import type { Reader } from '../../db/reader.js';
import { comesAfter, type EventPlace } from './eventCursor.js';
import { whenOf, type EventRow, type EventSource } from './eventSource.js';
import { eventSources } from './eventSources.js';

/** The latest events before a place, and whether there are more; one statement a kind. */
export async function readEvents(
  reader: Reader,
  before: EventPlace | null,
  size: number,
): Promise<{ events: EventRow[]; hasMore: boolean }> {
  const found: EventRow[] = [];
  for (const source of eventSources) found.push(...(await latest(reader, source, before, size)));
  const sorted = found.sort((one, other) => (comesAfter(one, other) ? 1 : -1));
  return { events: sorted.slice(0, size), hasMore: sorted.length > size };
}

async function latest(
  reader: Reader,
  source: EventSource,
  before: EventPlace | null,
  size: number,
): Promise<EventRow[]> {
  const { kind, from, table, where = '1 = 1', columns = {}, isDay = false } = source;
  const when = whenOf(source);
  const place =
    before === null ? '' : `AND (${when}, ${table}.id) ${beyond(source, before)} (?, ?)`;
  const rows = await reader.rows<Omit<EventRow, 'kind' | 'isDay'>>(
    `SELECT ${table}.id AS "id", ${when} AS "at", item.inventory_number AS "inventoryNumber",
       item.name AS "itemName", ${columns.subject ?? 'NULL'} AS "subject",
       ${columns.detail ?? 'NULL'} AS "detail", ${columns.person ?? 'NULL'} AS "person",
       ${columns.place ?? 'NULL'} AS "place", ${columns.minorUnits ?? 'NULL'} AS "minorUnits",
       ${columns.currency ?? 'NULL'} AS "currency"
     FROM ${from} WHERE ${where} ${place} ORDER BY 2 DESC, 1 DESC LIMIT ?`,
    [...(before === null ? [] : [before.at, before.id]), size + 1],
  );
  return rows.map((row) => ({ ...row, kind, isDay }));
}

/** A record may tell several events of one moment: the kind settles which of them come after. */
const beyond = ({ kind }: EventSource, before: EventPlace): string =>
  kind < before.kind ? '<=' : '<';
