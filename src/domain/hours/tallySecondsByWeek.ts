import type { Slice } from './countedSlices.js';
import { LocalPeriods } from './localPeriods.js';
import type { MonthTally } from './tallySeconds.js';
import { tallyByPeriod } from './tallyByPeriod.js';

export interface WeekTally extends Omit<MonthTally, 'localMonth'> {
  /** ISO 8601 week 'YYYY-Www' (Monday to Sunday) in the zone the work was done in. */
  readonly localWeek: string;
}

/**
 * Whole seconds by item, task, kind of task, person and local ISO week; the rows add up to the
 * slices exactly.
 *
 * @throws RangeError when a slice's zone is not an IANA zone known here.
 */
export function tallySecondsByWeek(slices: readonly Slice[]): WeekTally[] {
  return tallyByPeriod(slices, new LocalPeriods('WEEK')).map(({ localPeriod, ...tally }) => ({
    ...tally,
    localWeek: localPeriod,
  }));
}
