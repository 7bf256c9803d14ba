import { isGiven } from '../../api/kit/isGiven.js';
import type { Checklist } from '../../db/checklist.js';

/** A month: longer is a slip of the pen. */
const longestDwellMinutes = 44_640;
const mostPasses = 1000;

export function checkAmounts(
  check: Checklist,
  { dwellMinutes, passes }: { dwellMinutes?: number | null; passes?: number | null },
): void {
  if (isGiven(dwellMinutes)) {
    check.that(
      dwellMinutes >= 0 && dwellMinutes <= longestDwellMinutes,
      `Give from 0 to ${longestDwellMinutes} minutes, not ${dwellMinutes}.`,
      ['dwellMinutes'],
    );
  }
  if (isGiven(passes)) {
    const fits = passes >= 1 && passes <= mostPasses;
    check.that(fits, `Give from 1 to ${mostPasses} passes, not ${passes}.`, ['passes']);
  }
}
