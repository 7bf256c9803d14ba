import type { Slice } from './countedSlices.js';
import { LocalPeriods } from './localPeriods.js';
import { tallyByPeriod } from './tallyByPeriod.js';

export interface MonthTally {
  readonly itemId: string;
  readonly taskId: string | null;
  readonly taskKind: string;
  readonly personId: string;
  /** 'YYYY-MM' in the zone the work was done in. */
  readonly localMonth: string;
  readonly seconds: number;
}

/**
 * Whole seconds by item, task, kind of task, person and local month. A slice that runs past the
 * last midnight of a month is split there, so the rows add up to the slices exactly.
 *
 * @throws RangeError when a slice's zone is not an IANA zone known here.
 */
export function tallySeconds(slices: readonly Slice[]): MonthTally[] {
  return tallyByPeriod(slices, new LocalPeriods('MONTH')).map(({ localPeriod, ...tally }) => ({
    ...tally,
    localMonth: localPeriod,
  }));
}
