import { DateTime } from 'luxon';
import { dateOfDay, dayNumber } from '../../domain/dates/dayNumber.js';

const mostPoints = 260;

/** Days by weeks back from today to the first, oldest first, each with the instant of its end. */
export function burnUpDays(
  firstOn: string,
  { today, zone, nowMs }: { today: string; zone: string; nowMs: number },
): { on: string; endsAtMs: number }[] {
  const last = dayNumber(today);
  const span = Math.max(0, last - dayNumber(firstOn));
  const step = 7 * Math.max(1, Math.ceil(span / 7 / (mostPoints - 1)));
  const count = Math.ceil(span / step) + 1;
  return Array.from({ length: count }, (_, index) => {
    const on = dateOfDay(last - step * (count - 1 - index));
    const end = DateTime.fromISO(on, { zone }).plus({ days: 1 }).toMillis();
    return { on, endsAtMs: Math.min(end, nowMs) };
  });
}
