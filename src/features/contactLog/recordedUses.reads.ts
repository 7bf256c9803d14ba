import type { RowSource } from '../../db/rowSource.js';

/** A use of a rig as it is recorded, around the time of a log. */
export interface RecordedUse {
  id: string;
  rigId: string;
  startedAtMs: number;
  endedAtMs: number;
  contacts: number;
  /** Of the contacts that were counted from logs; null: written down by hand. */
  keys: readonly string[] | null;
}

/** The uses of rigs between two instants, those that reach into it too. */
export async function readRecordedUses(
  { rows }: RowSource,
  fromMs: number,
  untilMs: number,
): Promise<RecordedUse[]> {
  // The longest use that is kept has a thousand hours.
  const from = new Date(fromMs - 1000 * 3_600_000).toISOString();
  const found = await rows<UseRow>(
    `SELECT id AS "id", item_id AS "rigId", started_at AS "startedAt", minutes AS "minutes",
       contacts AS "contacts", contact_keys AS "keys"
     FROM on_air_use WHERE rig_use_id IS NULL AND started_at >= ? AND started_at <= ?
     ORDER BY started_at, id`,
    [from, new Date(untilMs).toISOString()],
  );
  return found.map(({ startedAt, minutes, keys, ...use }) => {
    const startedAtMs = Date.parse(startedAt);
    const endedAtMs = startedAtMs + minutes * 60_000;
    return {
      ...use,
      startedAtMs,
      endedAtMs,
      keys: keys === null ? null : (JSON.parse(keys) as string[]),
    };
  });
}

interface UseRow {
  id: string;
  rigId: string;
  startedAt: string;
  minutes: number;
  contacts: number;
  keys: string | null;
}
