import type { LocalDate } from './localDate.js';

const DAY_MS = 24 * 60 * 60 * 1000;

/** Days since 1 January 1970, for arithmetic on local dates. */
export const dayNumber = (date: LocalDate): number => Date.parse(`${date}T00:00:00Z`) / DAY_MS;

/** The date of a day number. */
export const dateOfDay = (day: number): LocalDate =>
  new Date(day * DAY_MS).toISOString().slice(0, 10);
