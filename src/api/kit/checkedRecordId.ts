import type { Checklist } from '../../db/checklist.js';
import { Refusal } from '../../db/refusal.js';
import { recordId } from './globalId.js';

/** `recordId` for one of many: a wrong id joins the other problems instead of ending the check. */
export function checkedRecordId(
  check: Checklist,
  wanted: string | readonly string[],
  text: string | null | undefined,
  path: string[],
): string | null {
  if (text === null || text === undefined) return null;
  try {
    return recordId(wanted, text, path);
  } catch (error) {
    if (!(error instanceof Refusal)) throw error;
    for (const problem of error.problems) check.add(problem);
    return null;
  }
}
