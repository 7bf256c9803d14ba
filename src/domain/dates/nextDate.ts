import { dayNumber, dateOfDay } from './dayNumber.js';

/** The next (1) or last (-1) year, month or day, as precise as the date is written (EDTF level 0). */
export function nextDate(date: string, by: 1 | -1): string {
  const [year = '', month, day] = date.split('-');
  if (month === undefined) return fourDigits(Number(year) + by);
  if (day !== undefined) return dateOfDay(dayNumber(date) + by);
  const months = Number(year) * 12 + Number(month) - 1 + by;
  return `${fourDigits(Math.floor(months / 12))}-${String((months % 12) + 1).padStart(2, '0')}`;
}

const fourDigits = (year: number): string => String(year).padStart(4, '0');
