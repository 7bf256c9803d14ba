import type { Checklist } from '../../db/checklist.js';
import { checkPastDay } from '../money/checkPastDay.js';
import { edtfRange } from './edtfRange.js';

/** The date of an event as it is kept: as written, with the days that it allows. */
export interface EventDateColumns {
  dateEdtf: string | null;
  earliestOn: string | null;
  latestOn: string | null;
}

/** Reads an event's date; what is wrong with it goes to the checklist. */
export function checkEventDate(
  check: Checklist,
  text: string | null,
  now: string,
): EventDateColumns {
  const undated = { dateEdtf: null, earliestOn: null, latestOn: null };
  if (text === null) return undated;
  const range = edtfRange(text);
  if (range.kind === 'refused') {
    check.refuse(range.why, ['dateEdtf']);
    return undated;
  }
  const { earliestOn, latestOn } = range;
  if (earliestOn !== null) checkPastDay(check, earliestOn, now, ['dateEdtf']);
  return { dateEdtf: text.trim(), earliestOn, latestOn };
}
