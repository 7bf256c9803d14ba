import { weekSpan, type DaySpan } from './weekSpan.js';

/** One way of writing the date of making on a part. */
export interface DateCodeFormat {
  readonly format: string;
  /** Regular expression with the groups `year` and `week`, and perhaps `maker`. */
  readonly pattern: string;
}

/** One thing a date code may mean. */
export interface DateCodeReading extends DaySpan {
  readonly format: string;
  /** Number of the maker; null where the code has none. */
  readonly maker: string | null;
  readonly year: number;
  readonly week: number;
}

/** Codes of this kind are found from the 1940s on; tubes had left new sets by the 1980s. */
export const dateCodeYears = { from: 1940, to: 1989 } as const;

/**
 * Everything that a date code may mean, oldest first; a code with a one-figure year is read once a
 * decade. Nothing is chosen: other evidence decides, and may narrow the years here.
 * @param years the first and last year that other evidence leaves open
 */
export function readDateCode(
  text: string,
  formats: readonly DateCodeFormat[],
  years: { readonly from: number; readonly to: number } = dateCodeYears,
): DateCodeReading[] {
  const readings = formats.flatMap(({ format, pattern }) => {
    const groups = new RegExp(pattern).exec(text.trim())?.groups;
    const yearText = groups?.['year'] ?? '';
    const week = Number(groups?.['week'] ?? 0);
    const step = 10 ** yearText.length;
    if (yearText === '') return [];
    const readingsOfFormat: DateCodeReading[] = [];
    const first = Math.floor(years.from / step) * step + Number(yearText);
    for (let year = first; year <= years.to; year += step) {
      const span = year < years.from ? null : weekSpan(year, week);
      const maker = groups?.['maker'] ?? null;
      if (span) readingsOfFormat.push({ format, maker, year, week, ...span });
    }
    return readingsOfFormat;
  });
  return readings.sort((one, other) => (one.earliest < other.earliest ? -1 : 1));
}
