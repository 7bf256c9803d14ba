import { DateTime } from 'luxon';

/** Days in which something was made, both included. */
export interface DaySpan {
  readonly earliest: string;
  readonly latest: string;
}

/**
 * The days that "week `week` of `year`" can mean on a part. How weeks were numbered is not fixed by
 * the codes, so it is the widest of two ways: weeks counted from 1 January, and weeks of ISO 8601;
 * both kept within the year. @returns null when the year has no such week.
 */
export function weekSpan(year: number, week: number): DaySpan | null {
  if (!Number.isInteger(week) || week < 1 || week > 53) return null;
  const day = (date: DateTime): string => date.toFormat('yyyy-MM-dd');
  const simple = DateTime.utc(year, 1, 1).plus({ days: 7 * (week - 1) });
  const iso = DateTime.fromObject(
    { weekYear: year, weekNumber: week, weekday: 1 },
    { zone: 'utc' },
  );
  const starts = [simple, ...(iso.isValid ? [iso] : [])];
  const earliest = starts.map(day).sort()[0] ?? '';
  const latest =
    starts
      .map((start) => day(start.plus({ days: 6 })))
      .sort()
      .at(-1) ?? '';
  const [yearBegins, yearEnds] = [`${year}-01-01`, `${year}-12-31`];
  if (earliest > yearEnds) return null;
  return {
    earliest: earliest < yearBegins ? yearBegins : earliest,
    latest: latest > yearEnds ? yearEnds : latest,
  };
}
