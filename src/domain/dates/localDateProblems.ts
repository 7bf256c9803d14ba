import { impossibleDay } from './impossibleDay.js';

/** What is wrong with a date that must be written 'YYYY-MM-DD'; empty when nothing is. */
export function localDateProblems(text: string): string[] {
  const parts = /^(\d{4})-(\d{2})-(\d{2})$/.exec(text);
  if (parts === null) return ['Write the date as year-month-day with dashes, such as 1971-04-03.'];
  const why = impossibleDay(Number(parts[1]), Number(parts[2]), Number(parts[3]));
  return why === null ? [] : [why];
}
