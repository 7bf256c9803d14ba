import type { ParsedEdtf } from 'edtf';

/** From the first instant to the first one after, in milliseconds; null where it is open. */
export interface Span {
  start: number | null;
  end: number | null;
}

/**
 * What a parsed date may span, from where the `edtf` package leaves off:
 * - an unknown end is no bound (its `null` would read as 1970);
 * - significant digits widen a year: 1950S2 is 1900 to 1999 (ISO 8601-2:2019; the package: 1950);
 * - `~`, `?` and `%` widen by one unit on each side, a year, month or day as precise as the date is
 *   (common practice: the padding that Python's `edtf` package has by default);
 * - seasons hold for both hemispheres, since the standard does not tie 21 to 24 to months.
 * @param isMarked the whole date carries a mark that was cut off before parsing
 */
export function edtfSpan(date: ParsedEdtf, isMarked = false): Span {
  switch (date.type) {
    case 'Interval':
      return { start: boundOf(date.lower).start, end: boundOf(date.upper).end };
    case 'Set':
    case 'List':
      return hullOf(date);
    case 'Season':
      return padded(date, partOfYear(date.year, date.season), isMarked);
    case 'Year':
      return wholeYears(...yearsOf(date));
    default:
      return padded(date, { start: date.min, end: nextAfter(date.max) }, isMarked);
  }
}

const boundOf = (bound: ParsedEdtf | number | null | undefined): Span =>
  typeof bound === 'object' && bound !== null ? edtfSpan(bound) : { start: null, end: null };

const nextAfter = (lastMs: number | null): number | null => (lastMs === null ? null : lastMs + 1);

/** All members of a set together; each is a date, or two dates with ".." between. */
function hullOf({ values, earlier, later }: ParsedEdtf): Span {
  const members = values.flat() as ParsedEdtf[];
  const spans = members.map((member) => edtfSpan(member));
  const starts = spans.map(({ start }) => start ?? Number.NEGATIVE_INFINITY);
  const ends = spans.map(({ end }) => end ?? Number.POSITIVE_INFINITY);
  return {
    start: earlier ? null : Math.min(...starts),
    end: later ? null : Math.max(...ends),
  };
}

/** First year, and the year after the last: digits that do not count may be any. */
export function yearsOf({ year, significant }: ParsedEdtf): [first: number, end: number] {
  const digits = String(Math.abs(year)).length;
  const width = significant >= 1 && significant < digits ? 10 ** (digits - significant) : 1;
  const first = Math.floor(year / width) * width;
  return [first, first + width];
}

function partOfYear(year: number, part: number): Span {
  const months = (from: number, count: number): Span => ({
    start: utc(year, from),
    end: utc(year, from + count),
  });
  if (part >= 40) return months((part - 40) * 6, 6);
  if (part >= 37) return months((part - 37) * 4, 4);
  if (part >= 33) return months((part - 33) * 3, 3);
  // 25 to 28 are seasons of the northern hemisphere, 29 to 32 of the southern.
  if (part === 25 || part === 31) return months(2, 3);
  if (part === 26 || part === 32) return months(5, 3);
  if (part === 27 || part === 29) return months(8, 3);
  // Spring and autumn: March to November on either hemisphere. Summer and winter may reach into
  // the next February.
  return part % 2 === 1 ? months(2, 9) : months(0, 14);
}

const wholeYears = (first: number, end: number): Span => ({
  start: utc(first, 0),
  end: utc(end, 0),
});

function padded(date: ParsedEdtf, { start, end }: Span, isMarked: boolean): Span {
  const marks = (date.uncertain?.value ?? 0) + (date.approximate?.value ?? 0);
  if (marks === 0 && !isMarked) return { start, end };
  const isDay = date.precision === 3 || date.precision === 0;
  const isWhole = (date.unspecified?.value ?? 0) === 0;
  const moved = (instant: number | null, by: -1 | 1): number | null => {
    if (instant === null) return null;
    const at = new Date(instant);
    if (date.type === 'Date' && isWhole && isDay) at.setUTCDate(at.getUTCDate() + by);
    else if (date.type === 'Date' && isWhole && date.precision === 2) {
      at.setUTCMonth(at.getUTCMonth() + by);
    } else at.setUTCFullYear(at.getUTCFullYear() + by);
    return at.getTime();
  };
  return { start: moved(start, -1), end: moved(end, 1) };
}

/** `Date.UTC` that takes years below 100 for what they are. */
function utc(year: number, month: number): number {
  const date = new Date(0);
  return date.setUTCFullYear(year, month, 1);
}
