import { DateTime } from 'luxon';
import type { RowSource } from '../../db/rowSource.js';
import { zoneOfBench } from './zoneOfBench.js';

/** The collection's zone, and the local date in it. */
export async function todayAtBench(
  source: RowSource,
  nowMs: number,
): Promise<{ zone: string; today: string }> {
  const zone = await zoneOfBench(source);
  return { zone, today: DateTime.fromMillis(nowMs, { zone }).toISODate() as string };
}
