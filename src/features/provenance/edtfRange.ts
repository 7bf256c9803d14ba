import edtf, { type ParsedEdtf } from 'edtf';
import { impossibleDay } from '../../domain/dates/impossibleDay.js';
import { edtfSpan, yearsOf } from './edtfSpan.js';

export type EdtfReading =
  | {
      readonly kind: 'range';
      /** First and last day that the text allows; null where it is open or unknown. */
      readonly earliestOn: string | null;
      readonly latestOn: string | null;
    }
  /** EDTF, but no day of it lies in the years 0001 to 9999 that dates are kept in. */
  | { readonly kind: 'beyond'; readonly firstYear: number; readonly lastYear: number }
  | { readonly kind: 'refused'; readonly why: string };

const longestText = 80;

/**
 * The days that an EDTF text (ISO 8601-2, levels 0 to 2) allows, as wide as it may be meant.
 *
 * The `edtf` package parses. Mended here, as found with version 4.11.1 against the specification of
 * the Library of Congress: it takes 85 for a century, 19850412 for an instant, 1985-02-29 for the
 * first of March and ".." or "/" alone for dates; it refuses 196X?; a time of day with an offset
 * moves the day; years past 271821 overflow; and `edtfSpan.ts` lists bounds that are too narrow. Its
 * error text is never shown: it runs to hundreds of lines.
 */
export function readEdtf(text: string): EdtfReading {
  const written = text.trim();
  if (written === '') return refused('No date is given.');
  if (written.length > longestText) {
    return refused(`A date has at most ${longestText} characters; this one has ${written.length}.`);
  }
  const noSuchDay = impossibleDayIn(written);
  if (noSuchDay !== null) return refused(noSuchDay);
  const parsed = isNoDate.test(written) ? null : parse(written);
  if (parsed === null) {
    return refused(
      `“${shown(written)}” is not an EDTF date (ISO 8601-2). Write 1957, 1957-04, 1957-04-12, ` +
        '195X (in the fifties), 1957~ (about), 1957? (uncertain), 1955/1958 (between) or 1955/.. (since).',
    );
  }
  const { start, end } = edtfSpan(parsed.date, parsed.isMarked);
  if (parsed.date.type === 'Year' && !(Math.abs(parsed.date.year) < latestYear)) {
    const [firstYear, endYear] = yearsOf(parsed.date);
    return { kind: 'beyond', firstYear, lastYear: endYear - 1 };
  }
  const [firstYear, lastYear] = [yearAt(start), yearAt(end === null ? null : end - 1)];
  if ((firstYear ?? 1) > latestYear || (lastYear ?? latestYear) < 1) {
    return {
      kind: 'beyond',
      firstYear: firstYear ?? lastYear ?? 0,
      lastYear: lastYear ?? firstYear ?? 0,
    };
  }
  return {
    kind: 'range',
    earliestOn: start === null || (firstYear ?? 1) < 1 ? null : dayOf(start),
    latestOn: end === null || (lastYear ?? 1) > latestYear ? null : dayOf(end - 1),
  };
}

/** A date that can be kept; `readEdtf` for those that are dates and cannot. */
export type EdtfRange = Exclude<EdtfReading, { kind: 'beyond' }>;

export function edtfRange(text: string): EdtfRange {
  const reading = readEdtf(text);
  if (reading.kind !== 'beyond') return reading;
  return refused(`“${text.trim()}” lies outside the years 0001 to 9999.`);
}

const latestYear = 9999;

/** What the package takes for a date and the specification does not know. */
const isNoDate = /^(?:-?\d{1,2}|-?\d{3}|-?\d{5,}|\.\.\/\.\.|\/|\.\.\/|\/\.\.)[?~%]?$/;

/** `edtf` refuses "196X?", which the standard allows: the mark is read here. */
function parse(written: string): { date: ParsedEdtf; isMarked: boolean } | null {
  const [, decade] = /^(\d{3}X|\d{2}XX)[?~%]$/.exec(written) ?? [];
  // The day is the one of the calendar that was written, whatever the offset of the clock.
  const [, day] =
    /^(\d{4}-\d{2}-\d{2})T\d{2}:\d{2}:\d{2}(?:Z|[+-]\d{2}(?::?\d{2})?)?$/.exec(written) ?? [];
  try {
    const date = edtf(decade ?? written);
    return { date: day === undefined ? date : edtf(day), isMarked: decade !== undefined };
  } catch {
    return null;
  }
}

/** `edtf` takes 1985-02-29 for the first of March. */
function impossibleDayIn(written: string): string | null {
  for (const [, year, month, day] of written
    .replace(/[?~%]/g, '')
    .matchAll(/(?<![\d-])(\d{4})-(\d{2})-(\d{2})(?!\d)/g)) {
    const why = impossibleDay(Number(year), Number(month), Number(day));
    if (why !== null) return why;
  }
  return null;
}

const dayOf = (instantMs: number): string => new Date(instantMs).toISOString().slice(0, 10);

const yearAt = (instantMs: number | null): number | null =>
  instantMs === null ? null : new Date(instantMs).getUTCFullYear();

const shown = (text: string): string => (text.length > 40 ? `${text.slice(0, 40)}…` : text);

const refused = (why: string): { kind: 'refused'; why: string } => ({ kind: 'refused', why });
