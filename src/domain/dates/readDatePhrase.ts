import type { DatePhrase } from './dateOffer.js';
import type { LocalDate } from './localDate.js';
import { readDecade } from './readDecade.js';
import { readWrittenDate } from './readWrittenDate.js';

const seasons: Readonly<Record<string, readonly [code: number, name: string]>> = {
  spring: [21, 'spring'],
  frühling: [21, 'spring'],
  frühjahr: [21, 'spring'],
  summer: [22, 'summer'],
  sommer: [22, 'summer'],
  autumn: [23, 'autumn'],
  fall: [23, 'autumn'],
  herbst: [23, 'autumn'],
  winter: [24, 'winter'],
};

/** First and last month of a part of a year. */
const parts: readonly (readonly [pattern: RegExp, name: string, from: string, to: string])[] = [
  [/^(?:early|(?:the )?(?:beginning|start) of|anfang)$/u, 'January to April', '01', '04'],
  [/^(?:mid|middle of|the middle of|mitte)$/u, 'May to August', '05', '08'],
  [/^(?:late|(?:the )?end of|ende)$/u, 'September to December', '09', '12'],
];

const numbered =
  /^(?:(?:the )?(?<word>first|second|third|fourth|last) (?<unit>quarter|half)(?: of)?|(?<letter>[qh])(?<digit>[1-4])) (?<year>\d{4})$/u;

/** One date without "about" or "before": a day, month, year, season, decade or part of a year. */
export function readDatePhrase(words: string, notAfter: LocalDate): DatePhrase[] {
  const decades = readDecade(words, notAfter);
  if (decades.length > 0) return decades;
  const [, name = '', season = ''] = /^(\p{L}+)(?: of)? (\d{4})$/u.exec(words) ?? [];
  const known = seasons[name];
  if (known) {
    const [code, readAs] = known;
    return [{ edtf: `${season}-${code}`, readAs: `${readAs} ${season}`, first: null, last: null }];
  }
  const part = partOfYear(words) ?? numberedPart(words);
  if (part) return [part];
  return twoDigitYears(words, notAfter) ?? written(words, notAfter);
}

function partOfYear(words: string): DatePhrase | null {
  const [, which = '', year = ''] = /^(.+?)[- ](\d{4})$/u.exec(words) ?? [];
  for (const [pattern, name, from, to] of parts) {
    if (!pattern.test(which)) continue;
    const first = `${year}-${from}`;
    const last = `${year}-${to}`;
    return { edtf: `[${first}..${last}]`, readAs: `once in ${name} ${year}`, first, last };
  }
  return null;
}

function numberedPart(words: string): DatePhrase | null {
  const groups = numbered.exec(words)?.groups;
  if (!groups) return null;
  const { word, unit, letter, digit, year = '' } = groups;
  const isHalf = unit === 'half' || letter === 'h';
  const count = isHalf ? 2 : 4;
  const order = ['first', 'second', 'third', 'fourth'];
  const place = word === 'last' ? count : word ? order.indexOf(word) + 1 : Number(digit);
  if (place > count) return null;
  const length = 12 / count;
  const month = (number: number): string => `${year}-${String(number).padStart(2, '0')}`;
  return {
    edtf: `${year}-${(isHalf ? 39 : 32) + place}`,
    readAs: `${isHalf ? 'half-year' : 'quarter'} ${place} of ${year}`,
    first: month((place - 1) * length + 1),
    last: month(place * length),
  };
}

/** "'62" and "62": the centuries that are not yet to come. */
function twoDigitYears(words: string, notAfter: LocalDate): DatePhrase[] | null {
  const [, digits] = /^['’]?(\d{2})$/u.exec(words) ?? [];
  if (digits === undefined) return null;
  return [`19${digits}`, `20${digits}`]
    .filter((year) => year <= notAfter.slice(0, 4))
    .map((year) => ({ edtf: year, readAs: `the year ${year}`, first: year, last: year }));
}

function written(words: string, notAfter: LocalDate): DatePhrase[] {
  const date = readWrittenDate(words, null, notAfter);
  const exact = (edtf: string, readAs: string): DatePhrase => ({
    edtf,
    readAs,
    first: edtf,
    last: edtf,
  });
  switch (date.kind) {
    case 'date':
      return [exact(date.date, `the day ${date.date}`)];
    case 'partial':
      return [exact(date.edtf, `the ${date.edtf.length === 4 ? 'year' : 'month'} ${date.edtf}`)];
    case 'ambiguous':
      return date.candidates.map((one) => exact(one.date, `the day ${one.date}, ${one.readAs}`));
    case 'unreadable':
      return [];
  }
}
