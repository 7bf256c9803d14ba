import type { LocalDate } from './localDate.js';

/** The days on which something may have been; null: no bound is known on that side. */
export interface DayRange {
  readonly earliest: LocalDate | null;
  readonly latest: LocalDate | null;
}

/**
 * How one uncertain date stands to another:
 * BEFORE and AFTER whatever the true days are; WITHIN when every day of the first is one of the
 * second; OVERLAPPING when they share days and the first is not within the second; UNDECIDED when
 * a bound that would be needed is not known.
 */
export type DateRelation = 'BEFORE' | 'AFTER' | 'WITHIN' | 'OVERLAPPING' | 'UNDECIDED';

/** Compares two uncertain dates by the days that each allows. */
export function compareDates(first: DayRange, second: DayRange): DateRelation {
  if (isBefore(first, second)) return 'BEFORE';
  if (isBefore(second, first)) return 'AFTER';
  const bounds = [first.earliest, first.latest, second.earliest, second.latest];
  const [start, end, outerStart, outerEnd] = bounds;
  if (!start || !end || !outerStart || !outerEnd) return 'UNDECIDED';
  return outerStart <= start && end <= outerEnd ? 'WITHIN' : 'OVERLAPPING';
}

const isBefore = (first: DayRange, second: DayRange): boolean =>
  first.latest !== null && second.earliest !== null && first.latest < second.earliest;
