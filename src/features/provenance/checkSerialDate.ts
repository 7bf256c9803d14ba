import type { Checklist } from '../../db/checklist.js';
import { checkEventDate } from './checkEventDate.js';

/** The date of a dated serial number: with both bounds, or nothing can be interpolated. */
export function checkSerialDate(check: Checklist, dateEdtf: string, now: string) {
  const { earliestOn, latestOn } = checkEventDate(check, dateEdtf, now);
  check.that(
    (earliestOn === null) === (latestOn === null),
    'Give a date with a beginning and an end, such as 1957 or 1957-04: others are dated by it.',
    ['dateEdtf'],
  );
  return { dateEdtf: dateEdtf.trim(), earliestOn, latestOn };
}
