import type { Checklist } from '../../db/checklist.js';
import { localDateProblems } from '../../domain/dates/localDateProblems.js';

/** Somewhere on earth the date is ahead of UTC by as much. */
const farthestAheadMs = 14 * 3_600_000;

/** A day on which something happened: in the calendar, and not still to come anywhere on earth. */
export function checkPastDay(check: Checklist, day: string, now: string, path: string[]): void {
  for (const problem of localDateProblems(day)) check.refuse(problem, path);
  const latest = new Date(Date.parse(now) + farthestAheadMs).toISOString().slice(0, 10);
  check.that(day <= latest, `${day} has not come yet; what happened has a day in the past.`, path);
}
