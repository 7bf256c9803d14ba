import { NEVER, type QueuedHours } from './finishDays.js';
import { MOST_WEEKS, weeksDrawn, type PaceChoices } from './weeksDrawn.js';

/** How far one project may be at the end of a day to come, all shares from 0 to 1. */
export interface ProgressPoint {
  /** Day number; at its end, but for the first point: today, before any further work. */
  readonly day: number;
  /** Share of the trials that are done with it. */
  readonly finished: number;
  /** Of the hours left today, what at least so many trials in ten have done: eight, five, two. */
  readonly byEightInTen: number;
  readonly byFiveInTen: number;
  readonly byTwoInTen: number;
}

/** Steps in the future: weeks for a year, then as many weeks a step as it takes. */
const MOST_STEPS = 52;

/**
 * How far a project comes in the weeks that `finishDays` drew for it by itself, trial by trial, up to
 * the day by which nineteen of twenty trials are done, or twenty years. What eight in ten trials have
 * done reaches all of it on the very day that eight in ten are done by.
 *
 * @param days what `finishDays` gave with the same hours and choices.
 * @returns nothing when nothing is left, or no trial is given.
 */
export function progressAhead(
  { totals }: QueuedHours,
  days: Float64Array,
  choices: PaceChoices,
): ProgressPoint[] {
  const trials = totals.length;
  if (!totals.some((hours) => hours > 0)) return [];
  const sortedDays = days.slice().sort();
  const last = sortedDays[Math.ceil(0.95 * trials) - 1]!;
  const horizon = last === NEVER ? MOST_WEEKS : Math.floor((last - choices.today) / 7) + 1;
  const weeksInStep = Math.ceil(horizon / MOST_STEPS);
  const steps = Math.ceil(horizon / weeksInStep);
  const shares = [
    totals.map((hours) => (hours > 0 ? 0 : 1)),
    ...Array.from({ length: steps }, () => new Float64Array(trials).fill(1)),
  ];
  const weeks = weeksDrawn(choices);
  for (let trial = 0; trial < trials; trial += 1) {
    const total = totals[trial]!;
    let done = 0;
    for (let week = 0; week < MOST_WEEKS && done < total; week += 1) {
      done += weeks.hoursOf(week);
      const step = (week + 1) / weeksInStep;
      if (Number.isInteger(step) && step <= steps && done < total) {
        shares[step]![trial] = done / total;
      }
    }
  }
  return shares.map((each, step): ProgressPoint => {
    const sorted = each.sort();
    const by = (tenths: number) => sorted[trials - Math.ceil((tenths * trials) / 10)]!;
    return {
      day: step === 0 ? choices.today : choices.today + 7 * weeksInStep * step - 1,
      finished: sorted.reduce((count, share) => count + (share === 1 ? 1 : 0), 0) / trials,
      byEightInTen: by(8),
      byFiveInTen: by(5),
      byTwoInTen: by(2),
    };
  });
}
