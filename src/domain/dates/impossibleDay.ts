import { daysInMonth } from './daysInMonth.js';

/** Why no such day is in the calendar, in a sentence; null when there is one. */
export function impossibleDay(year: number, month: number, day: number): string | null {
  if (year < 1) return 'The year must be 0001 or later.';
  if (month < 1 || month > 12) return `There is no month ${month}.`;
  const lastDay = daysInMonth(year, month);
  if (day >= 1 && day <= lastDay) return null;
  return `There is no day ${day} in month ${month} of ${year}, which has ${lastDay} days.`;
}
