import { seededRandom } from '../estimates/seededRandom.js';
import type { IsAway } from './awayDays.js';

export interface QueuedHours {
  readonly id: string;
  /** Hours left, one a trial. */
  readonly totals: Float64Array;
}

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
/** Stands for a trial that does not end within twenty years. */
export const NEVER = 2 ** 31 - 1;

/**
 * The day on which each of several projects is done, trial by trial, when one person does them one
 * after the other in the order given. Weeks to come are the collector's own, drawn in blocks from
 * anywhere in the past (a circular block bootstrap); days declared away take their share off a week.
 *
 * The weeks drawn do not depend on the order: two orders differ by the order alone.
 *
 * @returns for each project, day numbers in the order of the trials; NEVER where it has no end.
 */
export function finishDays(
  queue: readonly QueuedHours[],
  choices: PaceChoices,
): Map<string, Float64Array> {
  const trials = queue[0]?.totals.length ?? 0;
  const days = queue.map(() => new Float64Array(trials).fill(NEVER));
  const weeksAhead = workingShares(choices);
  const random = seededRandom(`${choices.seed}\u0002weeks`);
  const { weekHours, blockWeeks, today } = choices;
  const inFixedOrder = [...queue].sort((x, y) => (x.id < y.id ? -1 : 1));

  for (let trial = 0; trial < trials; trial += 1) {
    const allHours = inFixedOrder.reduce((sum, { totals }) => sum + totals[trial]!, 0);
    let done = 0;
    let place = 0;
    let target = queue[0]!.totals[trial]!;
    let index = 0;
    for (let week = 0; week < MOST_WEEKS && done < allHours; week += 1) {
      index =
        week % blockWeeks === 0
          ? Math.floor(random.nextUniform() * weekHours.length)
          : (index + 1) % weekHours.length;
      const ahead = weeksAhead[week]!;
      const hours = weekHours[index]! * ahead.share;
      while (place < queue.length && target <= done + hours) {
        const part = hours === 0 ? 0 : (target - done) / hours;
        days[place]![trial] = today + 7 * week + ahead.dayAt(part);
        place += 1;
        if (place < queue.length) target += queue[place]!.totals[trial]!;
      }
      done += hours;
    }
    // What is left by rounding alone ends with the rest.
    while (place < queue.length && done >= allHours) {
      days[place]![trial] = place === 0 ? today : days[place - 1]![trial]!;
      place += 1;
    }
  }
  return new Map(queue.map(({ id }, place) => [id, days[place]!]));
}

interface WeekAhead {
  /** Share of its days that are not away. */
  readonly share: number;
  /** The day of the week, from 0, on which a part of its hours is done. */
  dayAt(part: number): number;
}

function workingShares({ today, isAway }: PaceChoices): WeekAhead[] {
  return Array.from({ length: MOST_WEEKS }, (_, week) => {
    const working: number[] = [];
    for (let day = 0; day < 7; day += 1) if (!isAway(today + 7 * week + day)) working.push(day);
    return {
      share: working.length / 7,
      dayAt: (part) =>
        working[Math.min(working.length - 1, Math.max(0, Math.ceil(part * working.length) - 1))] ??
        0,
    };
  });
}
