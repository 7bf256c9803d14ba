import { monthByName } from './monthByName.js';

/** The parts of a written date before it is decided which number is which. */
export type WrittenShape =
  | { readonly kind: 'year'; readonly year: string }
  | { readonly kind: 'month'; readonly year: string; readonly month: number }
  | { readonly kind: 'day'; readonly year: string; readonly month: number; readonly day: number }
  /** Two numbers before the year, either of which may be the month. */
  | { readonly kind: 'twoNumbers'; readonly year: string; readonly numbers: [number, number] }
  | { readonly kind: 'unknownMonth'; readonly word: string };

const YEAR = String.raw`'?(?<year>\d{4}|\d{2})`;
const LONG_YEAR = String.raw`(?<year>\d{4})`;
const DAY = String.raw`(?<day>\d{1,2})`;
const NAME = String.raw`(?<name>\p{L}+)\.?`;

const SHAPES = [
  String.raw`${LONG_YEAR}`,
  // With a slash it might be a span of years, such as 1910/11.
  String.raw`${LONG_YEAR}-(?<month>\d{1,2})`,
  String.raw`(?<month>\d{1,2})[-/.]${LONG_YEAR}`,
  String.raw`${NAME}[\s,-]*${LONG_YEAR}`,
  String.raw`${LONG_YEAR}[\s-]+${NAME}`,
  String.raw`${LONG_YEAR}(?<mark>[-/.])(?<month>\d{1,2})\k<mark>${DAY}`,
  // Dots are written day first wherever they are used (common practice, no source).
  String.raw`${DAY}\.\s*(?<month>\d{1,2})\.\s*${YEAR}`,
  String.raw`(?<first>\d{1,2})(?<mark>[-/])(?<second>\d{1,2})\k<mark>${YEAR}`,
  String.raw`${DAY}(?:st|nd|rd|th|\.)?[\s-]*(?:of\s+)?${NAME}[\s,-]*${YEAR}`,
  String.raw`${NAME}[\s-]*${DAY}(?:st|nd|rd|th)?(?:,\s*|\s+|-)${YEAR}`,
  String.raw`${LONG_YEAR}[\s-]+${NAME}[\s-]+${DAY}`,
].map((shape) => new RegExp(`^${shape}$`, 'iu'));

/** Takes a written date apart; null when it has none of the shapes people write. */
export function writtenShape(text: string): WrittenShape | null {
  for (const shape of SHAPES) {
    const parts = shape.exec(text)?.groups;
    if (parts !== undefined) return shapeOf(parts);
  }
  return null;
}

function shapeOf(parts: Record<string, string | undefined>): WrittenShape {
  const { year = '', name, first, second, day } = parts;
  if (first !== undefined && second !== undefined) {
    return { kind: 'twoNumbers', year, numbers: [Number(first), Number(second)] };
  }
  const month = name === undefined ? parts['month'] : monthByName(name);
  if (month === null) return { kind: 'unknownMonth', word: name ?? '' };
  if (month === undefined) return { kind: 'year', year };
  if (day === undefined) return { kind: 'month', year, month: Number(month) };
  return { kind: 'day', year, month: Number(month), day: Number(day) };
}
