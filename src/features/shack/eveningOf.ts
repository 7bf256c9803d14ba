import { DateTime } from 'luxon';

const EVENING_HOUR = 20;

/** This evening at 20:00 in a zone; now, when that has passed. */
export function eveningOf(nowMs: number, zone: string): number {
  const evening = DateTime.fromMillis(nowMs, { zone }).set({
    hour: EVENING_HOUR,
    minute: 0,
    second: 0,
    millisecond: 0,
  });
  return Math.max(nowMs, evening.toMillis());
}
