import { dayNumber, dateOfDay } from '../dates/dayNumber.js';
import type { LocalDate } from '../dates/localDate.js';

/** Days away from the bench, both ends included. */
export interface Away {
  readonly fromOn: LocalDate;
  readonly untilOn: LocalDate;
  /** Every year from the first on, at the same days of the year. */
  readonly isYearly: boolean;
}

/** Answers whether a person is declared away on a day (its day number). */
export type IsAway = (day: number) => boolean;

export function awayDays(ranges: readonly Away[]): IsAway {
  const known = new Map<number, boolean>();
  const spans = ranges.map(({ fromOn, untilOn, isYearly }) => ({
    from: dayNumber(fromOn),
    until: dayNumber(untilOn),
    isYearly,
  }));
  return (day) => {
    let isAway = known.get(day);
    if (isAway === undefined) {
      isAway = spans.some((span) => covers(span, day));
      known.set(day, isAway);
    }
    return isAway;
  };
}

function covers(span: { from: number; until: number; isYearly: boolean }, day: number): boolean {
  if (day < span.from) return false;
  if (day <= span.until || !span.isYearly) return day <= span.until;
  // A range over New Year belongs to the year in which it begins.
  const year = Number(dateOfDay(day).slice(0, 4));
  return [year, year - 1].some((beginsIn) => {
    const from = inYear(span.from, beginsIn);
    return day >= from && day <= from + (span.until - span.from);
  });
}

/** 29 February is 1 March in a common year. */
const inYear = (day: number, year: number): number => {
  const { 0: month, 1: date } = dateOfDay(day).slice(5).split('-').map(Number);
  return Date.UTC(year, (month as number) - 1, date) / (24 * 60 * 60 * 1000);
};
