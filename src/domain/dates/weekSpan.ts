import { DateTime } from 'luxon';
import type { LocalDate } from './localDate.js';

/**
 * The days that "week 34 of 1956" may mean: the weeks counted from 1 January and the weeks of ISO
 * 8601 together, since makers did not say which they used. Null when the year has no such week.
 * @param week 1 to 53
 */
export function weekSpan(
  year: number,
  week: number,
): { readonly first: LocalDate; readonly last: LocalDate } | null {
  if (week < 1 || week > 53) return null;
  const newYear = DateTime.utc(year, 1, 1);
  const counted = newYear.plus({ days: 7 * (week - 1) });
  const countedEnd = DateTime.min(counted.plus({ days: 6 }), DateTime.utc(year, 12, 31));
  const starts = [counted];
  const ends = [countedEnd];
  if (week <= newYear.set({ month: 12, day: 28 }).weekNumber) {
    const iso = DateTime.fromObject(
      { weekYear: year, weekNumber: week, weekday: 1 },
      { zone: 'utc' },
    );
    starts.push(iso);
    ends.push(iso.plus({ days: 6 }));
  }
  const day = (date: DateTime): LocalDate => date.toFormat('yyyy-MM-dd');
  return { first: day(DateTime.min(...starts)), last: day(DateTime.max(...ends)) };
}
