import type { Reader } from '../../db/reader.js';
import type { TouchedRecord } from './changeEvent.entity.js';

/** An event as the feed hands it on. */
export interface ChangeEvent {
  sequence: number;
  at: string;
  action: string;
  actorId: string | null;
  records: TouchedRecord[] | null;
  itemIds: string[] | null;
}

/** Where a window stands in the feed: the last event it knows. */
export interface FeedPosition {
  sequence: number;
  /** When that event was; tells a restored copy of the records from those it was copied from. */
  at: string;
}

export const beforeAllEvents: FeedPosition = { sequence: 0, at: '' };
const eventsAtOnce = 100;

export async function latestPosition(reader: Reader): Promise<FeedPosition> {
  const [row] = await reader.rows<{ sequence: number | string; at: string }>(
    'SELECT sequence AS "sequence", at AS "at" FROM change_event ORDER BY sequence DESC LIMIT 1',
  );
  return row ? { sequence: Number(row.sequence), at: row.at } : beforeAllEvents;
}

/** True when the feed still holds the event of this position, or has not begun either. */
export async function isKnownPosition(reader: Reader, position: FeedPosition): Promise<boolean> {
  if (position.sequence === 0) {
    const [first] = await reader.rows<{ sequence: number | string | null }>(
      'SELECT MIN(sequence) AS "sequence" FROM change_event',
    );
    return Number(first?.sequence ?? 1) === 1;
  }
  const [row] = await reader.rows<{ at: string }>(
    'SELECT at AS "at" FROM change_event WHERE sequence = ?',
    [position.sequence],
  );
  return row?.at === position.at;
}

/** The next events after a position, in the order of their commits. */
export async function eventsAfter(reader: Reader, sequence: number): Promise<ChangeEvent[]> {
  const rows = await reader.rows<Record<'sequence' | 'at' | 'action', string> & Kept>(
    `SELECT sequence AS "sequence", at AS "at", action AS "action", actor_id AS "actorId",
       records AS "records", item_ids AS "itemIds"
     FROM change_event WHERE sequence > ? ORDER BY sequence LIMIT ?`,
    [sequence, eventsAtOnce],
  );
  return rows.map((row) => ({
    sequence: Number(row.sequence),
    at: row.at,
    action: row.action,
    actorId: row.actorId,
    records: read<TouchedRecord[]>(row.records),
    itemIds: read<string[]>(row.itemIds),
  }));
}

interface Kept {
  actorId: string | null;
  records: string | null;
  itemIds: string | null;
}

const read = <Value>(kept: string | null): Value | null =>
  kept === null ? null : (JSON.parse(kept) as Value);
