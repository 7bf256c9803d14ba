import { MOST_WEEKS, weeksDrawn, type PaceChoices } from './weeksDrawn.js';

export interface QueuedHours {
  readonly id: string;
  /** Hours left, one a trial. */
  readonly totals: Float64Array;
}

/** Stands for a trial that does not end within twenty years. */
export const NEVER = 2 ** 31 - 1;

/**
 * The day on which each of several projects is done, trial by trial, when one person does them one
 * after the other in the order given, in weeks to come that are the collector's own.
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
  const weeks = weeksDrawn(choices);
  const inFixedOrder = [...queue].sort((x, y) => (x.id < y.id ? -1 : 1));

  for (let trial = 0; trial < trials; trial += 1) {
    const allHours = inFixedOrder.reduce((sum, { totals }) => sum + totals[trial]!, 0);
    let done = 0;
    let place = 0;
    let target = queue[0]!.totals[trial]!;
    for (let week = 0; week < MOST_WEEKS && done < allHours; week += 1) {
      const hours = weeks.hoursOf(week);
      while (place < queue.length && target <= done + hours) {
        const part = hours === 0 ? 0 : (target - done) / hours;
        days[place]![trial] = choices.today + 7 * week + weeks.dayAt(week, part);
        place += 1;
        if (place < queue.length) target += queue[place]!.totals[trial]!;
      }
      done += hours;
    }
    // What is left by rounding alone ends with the rest.
    while (place < queue.length && done >= allHours) {
      days[place]![trial] = place === 0 ? choices.today : days[place - 1]![trial]!;
      place += 1;
    }
  }
  return new Map(queue.map(({ id }, place) => [id, days[place]!]));
}
