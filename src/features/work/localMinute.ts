import { DateTime } from 'luxon';

/** An instant as the clock at the bench showed it: `2026-06-01 14:00 (Europe/Berlin)`. */
export const localMinute = (instant: string, zone: string): string =>
  `${DateTime.fromISO(instant, { zone }).toFormat('yyyy-MM-dd HH:mm')} (${zone})`;
