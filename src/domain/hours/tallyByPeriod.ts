import type { Slice } from './countedSlices.js';
import type { LocalPeriods } from './localPeriods.js';

/** Whole seconds of one person on one task (or item as a whole) in one local period. */
export interface PeriodTally {
  readonly itemId: string;
  readonly taskId: string | null;
  readonly taskKind: string;
  readonly personId: string;
  readonly localPeriod: string;
  readonly seconds: number;
}

/** Splits slices where a local period ends in the slice's own zone, and adds up the parts. */
export function tallyByPeriod(slices: readonly Slice[], periods: LocalPeriods): PeriodTally[] {
  const tallies = new Map<string, { -readonly [Field in keyof PeriodTally]: PeriodTally[Field] }>();
  for (const slice of slices) {
    const { itemId, taskId, taskKind, personId, zone, endedAtMs } = slice;
    for (let from = slice.startedAtMs; from < endedAtMs;) {
      const { label, endsAtMs } = periods.at(from, zone);
      const until = Math.min(endsAtMs, endedAtMs);
      const seconds = (until - from) / 1000;
      const key = JSON.stringify([itemId, taskId, taskKind, personId, label]);
      const tally = tallies.get(key);
      if (tally === undefined) {
        tallies.set(key, { itemId, taskId, taskKind, personId, localPeriod: label, seconds });
      } else {
        tally.seconds += seconds;
      }
      from = until;
    }
  }
  return [...tallies.values()];
}
