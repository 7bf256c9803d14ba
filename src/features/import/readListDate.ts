import { readWrittenDate } from '../../domain/dates/readWrittenDate.js';
import type { WrittenDate, WrittenOrder } from '../../domain/dates/writtenDate.js';

/** A date as the list writes it; spreadsheets add a midnight to a day, which says nothing. */
export const readListDate = (
  text: string,
  order: WrittenOrder | null,
  latestDay: string,
): WrittenDate => readWrittenDate(text.replace(/[ T]0?0:00(:00)?$/, ''), order, latestDay);

/** Why a date has to be asked about. */
export function whyUnclear(written: WrittenDate & { kind: 'ambiguous' }, text: string): string {
  const readings = written.candidates.map(({ date, readAs }) => `${date} (${readAs})`);
  const isOrderOpen = written.candidates.some(({ readAs }) => readAs.includes('first'));
  const mend = isOrderOpen
    ? 'Say for the whole list which order it has (date order: day first or month first), or write the year first.'
    : 'Write the year in four digits.';
  return `“${text}” may be ${readings.join(' or ')}. ${mend}`;
}
