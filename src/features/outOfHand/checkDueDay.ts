import type { Checklist } from '../../db/checklist.js';
import { localDateProblems } from '../../domain/dates/localDateProblems.js';

/** A day by which something is to be back: in the calendar, and not before it went. */
export function checkDueDay(check: Checklist, lentOn: string, dueOn: string | null): void {
  if (dueOn === null) return;
  for (const problem of localDateProblems(dueOn)) check.refuse(problem, ['dueOn']);
  check.that(dueOn >= lentOn, 'It cannot be due back before it went.', ['dueOn']);
}
