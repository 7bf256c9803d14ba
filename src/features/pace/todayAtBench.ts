import { DateTime } from 'luxon';
import type { RowSource } from '../../db/rowSource.js';

/** The collection's zone, and the local date in it. */
export async function todayAtBench(
  { rows }: RowSource,
  nowMs: number,
): Promise<{ zone: string; today: string }> {
  const [collection] = await rows<{ zone: string }>(
    'SELECT zone AS "zone" FROM collection LIMIT 1',
  );
  const zone = collection?.zone ?? 'UTC';
  return { zone, today: DateTime.fromMillis(nowMs, { zone }).toISODate() as string };
}
