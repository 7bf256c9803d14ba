import type { WrittenOrder } from '../../domain/dates/writtenDate.js';
import { edtfRange } from '../provenance/edtfRange.js';
import { readListDate, whyUnclear } from './readListDate.js';

const about = /^(?:ca\.?|circa|c\.|um|about|approx\.?|~)\s*/i;
const decade = /^(\d{3})0\s?(?:s|'s|er|er jahre)$/i;

export type Made = { edtf: string } | { why: string };

/** When a thing was made, as EDTF: "1965", "ca. 1965" → 1965~, "1960s" → 196X, or EDTF itself. */
export function readMade(text: string, order: WrittenOrder | null, latestDay: string): Made {
  const years = decade.exec(text)?.[1];
  if (years !== undefined) return { edtf: `${years}X` };
  const isAbout = about.test(text);
  const plain = text.replace(about, '');
  const written = readListDate(plain, order, latestDay);
  const suffix = isAbout ? '~' : '';
  if (written.kind === 'date') return { edtf: written.date + suffix };
  if (written.kind === 'partial') return { edtf: written.edtf + suffix };
  if (written.kind === 'ambiguous') return { why: whyUnclear(written, text) };
  return !isAbout && edtfRange(text).kind === 'range' ? { edtf: text } : { why: written.why };
}
