import type { Checklist } from '../../db/checklist.js';

const longestHours = 1000;

/** Hours of use as they are kept, in whole minutes. */
export function useMinutes(check: Checklist, hours: number, mayBeNone = false): number {
  const minutes = Math.round(hours * 60);
  check.that(
    Number.isFinite(minutes) && minutes >= (mayBeNone ? 0 : 1) && hours <= longestHours,
    `Hours of use are ${mayBeNone ? 'from 0' : 'above 0'} up to ${longestHours}; ${hours} is neither.`,
    ['hours'],
  );
  return minutes;
}
