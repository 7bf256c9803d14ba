import { quantileOfSorted } from '../estimates/quantileOfSorted.js';
import type { KeptWeek } from './keptWeeks.js';

export interface Pace {
  /** Weeks that tell of the pace: all but those mostly away. */
  readonly weeks: readonly KeptWeek[];
  /** Mean and middle hours of these weeks; null when there are none. */
  readonly meanHours: number | null;
  readonly medianHours: number | null;
  /** Of these, the weeks without any work. */
  readonly idleWeekCount: number;
  /** Weeks left out because the person was declared away for most of them. */
  readonly awayWeekCount: number;
}

/** From four days away on, a week says nothing of the pace. */
const MOSTLY_AWAY = 4;

/** Hours per week as really kept: idle weeks count, weeks declared away do not. */
export function pace(all: readonly KeptWeek[]): Pace {
  const weeks = all.filter(({ awayDays, hours }) => awayDays < MOSTLY_AWAY || hours > 0);
  const hours = Float64Array.from(weeks, (week) => week.hours).sort();
  const isKnown = weeks.length > 0;
  return {
    weeks,
    meanHours: isKnown ? hours.reduce((sum, each) => sum + each, 0) / hours.length : null,
    medianHours: isKnown ? quantileOfSorted(hours, 0.5) : null,
    idleWeekCount: weeks.filter((week) => week.hours === 0).length,
    awayWeekCount: all.length - weeks.length,
  };
}
