import edtf, { type ParsedEdtf } from 'edtf';
import { impossibleDay } from '../../domain/dates/impossibleDay.js';
import { edtfSpan } from './edtfSpan.js';

export type EdtfRange =
  | {
      readonly kind: 'range';
      /** First and last day that the text allows; null where it is open or unknown. */
      readonly earliestOn: string | null;
      readonly latestOn: string | null;
    }
  | { readonly kind: 'refused'; readonly why: string };

const longestText = 80;

/**
 * The days that an EDTF text (ISO 8601-2) allows, as wide as it may be meant.
 *
 * The `edtf` package parses; its own bounds are not used where they are too narrow, and its error
 * text is never shown: it runs to hundreds of lines.
 */
export function edtfRange(text: string): EdtfRange {
  const written = text.trim();
  if (written === '') return refused('No date is given.');
  if (written.length > longestText) {
    return refused(`A date has at most ${longestText} characters; this one has ${written.length}.`);
  }
  const noSuchDay = impossibleDayIn(written);
  if (noSuchDay !== null) return refused(noSuchDay);
  const parsed = parse(written);
  if (parsed === null) {
    return refused(
      `“${written}” is not an EDTF date (ISO 8601-2). Write 1957, 1957-04, 1957-04-12, ` +
        '195X (in the fifties), 1957~ (about), 1957? (uncertain), 1955/1958 (between) or 1955/.. (since).',
    );
  }
  const { start, end } = edtfSpan(parsed.date, parsed.isMarked);
  const earliestOn = start === null ? null : dayOf(start);
  const latestOn = end === null ? null : dayOf(end - 1);
  if (earliestOn === undefined || latestOn === undefined) {
    return refused(`“${written}” lies outside the years 0001 to 9999.`);
  }
  return { kind: 'range', earliestOn, latestOn };
}

/** `edtf` refuses "196X?", which the standard allows: the mark is read here. */
function parse(written: string): { date: ParsedEdtf; isMarked: boolean } | null {
  const [, decade] = /^(\d{3}X|\d{2}XX)[?~%]$/.exec(written) ?? [];
  try {
    return { date: edtf(decade ?? written), isMarked: decade !== undefined };
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

/** @returns undefined outside the years 0001 to 9999 */
function dayOf(instantMs: number): string | undefined {
  const date = new Date(instantMs);
  if (Number.isNaN(date.getTime())) return undefined;
  const year = date.getUTCFullYear();
  return year < 1 || year > 9999 ? undefined : date.toISOString().slice(0, 10);
}

const refused = (why: string): EdtfRange => ({ kind: 'refused', why });
