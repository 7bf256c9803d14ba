import { seededRandom } from '../estimates/seededRandom.js';
import type { IsAway } from './awayDays.js';

export interface PaceChoices {
  readonly seed: string;
  /** Hours of the collector's own weeks in their order, idle ones too; at least one above 0. */
  readonly weekHours: readonly number[];
  /** Day number of the first day that counts. */
  readonly today: number;
  readonly isAway: IsAway;
  /** How many neighbouring weeks are drawn together, so that runs of idle weeks stay runs. */
  readonly blockWeeks: number;
}

/** Twenty years: what is not done by then will not be planned by this. */
export const MOST_WEEKS = 1040;

/** The weeks to come of one trial after another, each of the collector's own. */
export interface WeeksDrawn {
  /** Hours of a week to come. Ask a trial's weeks in their order, from 0, and then the next trial's. */
  hoursOf(week: number): number;
  /** The day of the week, from 0, on which a part of its hours is done. */
  dayAt(week: number, part: number): number;
}

/**
 * Weeks drawn in blocks from anywhere in the past (a circular block bootstrap); days declared away
 * take their share off a week. Drawn again with the same choices for as many weeks of each trial,
 * they are the same weeks.
 */
export function weeksDrawn({
  seed,
  weekHours,
  blockWeeks,
  today,
  isAway,
}: PaceChoices): WeeksDrawn {
  const working = Array.from({ length: MOST_WEEKS }, (_, week) => {
    const days: number[] = [];
    for (let day = 0; day < 7; day += 1) if (!isAway(today + 7 * week + day)) days.push(day);
    return days;
  });
  const random = seededRandom(`${seed}\u0002weeks`);
  let index = 0;
  return {
    hoursOf(week) {
      index =
        week % blockWeeks === 0
          ? Math.floor(random.nextUniform() * weekHours.length)
          : (index + 1) % weekHours.length;
      return weekHours[index]! * (working[week]!.length / 7);
    },
    dayAt(week, part) {
      const days = working[week]!;
      return days[Math.min(days.length - 1, Math.max(0, Math.ceil(part * days.length) - 1))] ?? 0;
    },
  };
}
