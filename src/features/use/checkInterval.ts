import type { Checklist } from '../../db/checklist.js';

const mostDays = 36_500;
const mostHours = 100_000;

/** A rule needs an interval of use, of days, or of both; each within reason. */
export function checkInterval(
  check: Checklist,
  everyUseHours: number | null,
  everyDays: number | null,
): number | null {
  check.that(
    everyUseHours !== null || everyDays !== null,
    'Say after how many hours of use, or after how many days.',
    ['everyUseHours'],
  );
  check.that(
    everyUseHours === null || (everyUseHours >= 0.1 && everyUseHours <= mostHours),
    `Hours of use between two times are 0.1 to ${mostHours}.`,
    ['everyUseHours'],
  );
  check.that(
    everyDays === null || (everyDays >= 1 && everyDays <= mostDays),
    `Days between two times are 1 to ${mostDays}.`,
    ['everyDays'],
  );
  return everyUseHours === null ? null : Math.round(everyUseHours * 60);
}
