import { dayNumber } from '../dates/dayNumber.js';
import type { IsAway } from './awayDays.js';

/** One whole week of the collector's own, Monday to Sunday. */
export interface KeptWeek {
  /** Day number of its Monday. */
  readonly monday: number;
  readonly hours: number;
  readonly awayDays: number;
}

/** 1970-01-01 was a Thursday. */
export const mondayOf = (day: number): number => day - ((((day + 3) % 7) + 7) % 7);

/**
 * The weeks from the first with work in it to the last that is over, those without work too.
 *
 * @param hoursByMonday by the date of each week's Monday.
 * @param today the local date; its own week is not over and does not count.
 * @param mostWeeks the latest so many: what was kept long ago says little of now.
 */
export function keptWeeks(
  hoursByMonday: ReadonlyMap<string, number>,
  today: string,
  isAway: IsAway,
  mostWeeks: number,
): KeptWeek[] {
  const thisMonday = mondayOf(dayNumber(today));
  const worked = new Map([...hoursByMonday].map(([date, hours]) => [dayNumber(date), hours]));
  const first = Math.min(...worked.keys());
  const weeks: KeptWeek[] = [];
  for (let monday = Math.max(first, thisMonday - 7 * mostWeeks); monday < thisMonday; monday += 7) {
    let awayDays = 0;
    for (let day = monday; day < monday + 7; day += 1) awayDays += isAway(day) ? 1 : 0;
    weeks.push({ monday, hours: worked.get(monday) ?? 0, awayDays });
  }
  return weeks;
}
