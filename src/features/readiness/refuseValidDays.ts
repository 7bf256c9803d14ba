import type { Checklist } from '../../db/checklist.js';

const mostDays = 36_500;

/** A check that holds for no day at all, or for longer than a life, is a slip of the pen. */
export function refuseValidDays(check: Checklist, days: number, path: string[]): void {
  check.that(
    days >= 1 && days <= mostDays,
    `A check holds for 1 to ${mostDays} days; ${days} is neither.`,
    path,
  );
}
