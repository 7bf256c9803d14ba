import { impossibleDay } from './impossibleDay.js';
import type { LocalDate } from './localDate.js';
import type { DateCandidate, ReadAs, WrittenDate, WrittenOrder } from './writtenDate.js';
import { writtenShape } from './writtenShape.js';

const LONGEST_TEXT = 60;

/**
 * Reads a date as people write it: 2024-03-01, 1.3.2024, 3 Mar 2024, March 3, 2024, 13/04/1971, or
 * a year or month alone. Whatever may be read in two ways is handed back to be asked about, never
 * guessed: 03/04/1971 unless `order` is known, and a year of two digits, which may be 19.. or 20..
 * unless `notAfter` rules one out.
 * @param order how the list as a whole writes numbers before slashes or dashes; dots are day first
 * @param notAfter the last day a two-digit year may mean, usually today
 */
export function readWrittenDate(
  text: string,
  order: WrittenOrder | null = null,
  notAfter: LocalDate | null = null,
): WrittenDate {
  const written = text.trim();
  if (written === '') return unreadable('No date is given.');
  const shape = written.length > LONGEST_TEXT ? null : writtenShape(written);
  if (shape === null) {
    const shown = written.length > LONGEST_TEXT ? `${written.slice(0, LONGEST_TEXT)}…` : written;
    return unreadable(
      `“${shown}” is not a date that can be read: write it as 1971-04-03, 3 Apr 1971 or 3.4.1971, ` +
        'with the year in four digits.',
    );
  }
  switch (shape.kind) {
    case 'unknownMonth':
      return unreadable(`“${shape.word}” is not the name of a month in English or German.`);
    case 'year':
      return partial(shape.year, null);
    case 'month':
      return partial(shape.year, shape.month);
    case 'day':
      return decide([{ ...shape, order: null }], notAfter);
    case 'twoNumbers': {
      const [first, second] = shape.numbers;
      const { year } = shape;
      if (first === second)
        return decide([{ year, day: first, month: second, order: null }], notAfter);
      const dayFirst = { year, day: first, month: second, order: 'day first' } as const;
      const monthFirst = { year, day: second, month: first, order: 'month first' } as const;
      if (order === null) return decide([dayFirst, monthFirst], notAfter);
      return decide([order === 'DAY_FIRST' ? dayFirst : monthFirst], notAfter);
    }
  }
}

interface Reading {
  readonly year: string;
  readonly month: number;
  readonly day: number;
  readonly order: 'day first' | 'month first' | null;
}

function decide(readings: readonly Reading[], notAfter: LocalDate | null): WrittenDate {
  const candidates = new Map<LocalDate, ReadAs | null>();
  const reasons = new Set<string>();
  for (const { year, month, day, order } of readings) {
    for (const { fullYear, century } of fullYears(year)) {
      const date = `${fullYear}-${twoDigits(month)}-${twoDigits(day)}`;
      const why = impossibleDay(Number(fullYear), month, day);
      if (why !== null) {
        reasons.add(order === null ? why : `Read ${order}: ${why}`);
      } else if (century !== null && notAfter !== null && date > notAfter) {
        reasons.add(`${date} is later than ${notAfter}: write the year in four digits.`);
      } else if (!candidates.has(date)) {
        candidates.set(date, order && century ? `${order}, ${century}` : (order ?? century));
      }
    }
  }
  const found = [...candidates].map(([date, readAs]) => ({ date, readAs }));
  const only = found[0];
  if (only === undefined) return unreadable([...reasons].join(' '));
  if (found.length === 1) return { kind: 'date', date: only.date };
  return {
    kind: 'ambiguous',
    candidates: found.filter((one): one is DateCandidate => one.readAs !== null),
  };
}

function fullYears(year: string) {
  if (year.length === 4) return [{ fullYear: year, century: null }];
  return [
    { fullYear: `19${year}`, century: 'in the 1900s' as const },
    { fullYear: `20${year}`, century: 'in the 2000s' as const },
  ];
}

function partial(year: string, month: number | null): WrittenDate {
  const why = impossibleDay(Number(year), month ?? 1, 1);
  if (why !== null) return unreadable(why);
  return { kind: 'partial', edtf: month === null ? year : `${year}-${twoDigits(month)}` };
}

function twoDigits(number: number): string {
  return String(number).padStart(2, '0');
}

function unreadable(why: string): WrittenDate {
  return { kind: 'unreadable', why };
}
