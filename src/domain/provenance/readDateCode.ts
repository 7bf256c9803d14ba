import type { LocalDate } from '../dates/localDate.js';
import { weekSpan } from '../dates/weekSpan.js';

/** One way in which makers wrote dates on parts. */
export interface DateCodeFormat {
  readonly format: string;
  /** A regular expression with the groups `year` (one or two digits) and `week`, perhaps `maker`. */
  readonly pattern: string;
}

/** One reading of a date code; one text may have several. */
export interface DateCodeReading {
  readonly format: string;
  /** The maker's number as printed; null where the format has none. */
  readonly maker: string | null;
  readonly year: number;
  readonly week: number;
  readonly first: LocalDate;
  readonly last: LocalDate;
}

/** Source-date codes came into use in the 1940s; no code is read as earlier. */
const firstDecade = 1940;
/** A single digit for the year went out of use when two digits came in (REFERENCES: 1940 to 1979). */
const lastDecadeOfOneDigit = 1970;

/**
 * Every reading of a date code: all formats that fit, and for a year of one digit every decade that
 * it may mean. Nothing is chosen here: what else is known of the set narrows it.
 * @param notAfter no part was made later than this day, usually today
 */
export function readDateCode(
  text: string,
  formats: readonly DateCodeFormat[],
  notAfter: LocalDate,
): DateCodeReading[] {
  const code = text.trim();
  return formats.flatMap(({ format, pattern }) => {
    const groups = new RegExp(pattern, 'u').exec(code)?.groups;
    const { year, week, maker } = groups ?? {};
    if (year === undefined || week === undefined) return [];
    return yearsOf(year).flatMap((full): DateCodeReading[] => {
      const days = weekSpan(full, Number(week));
      if (days === null || days.first > notAfter) return [];
      return [{ format, maker: maker ?? null, year: full, week: Number(week), ...days }];
    });
  });
}

function yearsOf(digits: string): number[] {
  if (digits.length === 4) return [Number(digits)];
  const years =
    digits.length === 1
      ? decadesTo(lastDecadeOfOneDigit).map((decade) => decade + Number(digits))
      : [1900 + Number(digits), 2000 + Number(digits)];
  return years.filter((year) => year >= firstDecade);
}

const decadesTo = (last: number): number[] =>
  Array.from({ length: (last - firstDecade) / 10 + 1 }, (_, index) => firstDecade + 10 * index);
