import type { Checklist } from '../../db/checklist.js';
import { dayNumber } from '../../domain/dates/dayNumber.js';
import { localDateProblems } from '../../domain/dates/localDateProblems.js';

const mostDays = 366;

/** Both days are in the calendar, in order, and at most a year apart. */
export function checkAway(check: Checklist, fromOn: string, untilOn: string): void {
  for (const problem of localDateProblems(fromOn)) check.refuse(problem, ['fromOn']);
  for (const problem of localDateProblems(untilOn)) check.refuse(problem, ['untilOn']);
  check.that(untilOn >= fromOn, 'The last day away is before the first.', ['untilOn']);
  check.that(
    dayNumber(untilOn) - dayNumber(fromOn) < mostDays,
    'A stretch away lasts a year at the most. Declare a longer one in parts.',
    ['untilOn'],
  );
}
