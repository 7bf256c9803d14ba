import { describe, expect, it } from 'vitest';
import { compareDates } from '../../src/domain/dates/compareDates.js';
import { readShorthand } from '../../src/domain/dates/readShorthand.js';
import { readEdtf } from '../../src/features/provenance/edtfRange.js';

const offers = (text: string) => readShorthand(text, '2026-06-01').map(({ edtf }) => edtf);

describe('a date in people’s own words, offered as EDTF', () => {
  it.each([
    ['about 1962', '1962~'],
    ['c. 1962', '1962~'],
    ['circa March 1962', '1962-03~'],
    ['um 1962', '1962~'],
    ['1962?', '1962?'],
    ['perhaps about 1962', '1962%'],
    ['late 60s', '[1966..1969]'],
    ['the early fifties', '[1950..1953]'],
    ['mid-1970s', '[1973..1977]'],
    ['Ende der 60er Jahre', '[1966..1969]'],
    ['the 1960s', '196X'],
    ['about the 1960s', '196X~'],
    ['before 1975', '[..1974]'],
    ['before 3 Apr 1971', '[..1971-04-02]'],
    ['vor 1975', '[..1974]'],
    ['after December 1960', '[1961-01..]'],
    ['by 1975', '[..1975]'],
    ['1975 or earlier', '[..1975]'],
    ['spring 1971', '1971-21'],
    ['Frühjahr 1971', '1971-21'],
    ['fall of 1971', '1971-23'],
    ['early 1971', '[1971-01..1971-04]'],
    ['Ende 1971', '[1971-09..1971-12]'],
    ['first half of 1971', '1971-40'],
    ['Q3 1971', '1971-35'],
    ['between 1955 and 1958', '[1955..1958]'],
    ['3 April 1971', '1971-04-03'],
    ["'62", '1962'],
  ])('%s is %s', (text, edtf) => {
    expect(offers(text)).toEqual([edtf]);
  });

  it('offers both where two things may be meant', () => {
    expect(offers('1955-58')).toEqual(['[1955..1958]', '1955/1958']);
    expect(offers('from 1955 to 1958')).toEqual(['[1955..1958]', '1955/1958']);
    expect(offers('since 1960')).toEqual(['[1960..]', '1960/..']);
    expect(offers('03/04/1971')).toEqual(['1971-04-03', '1971-03-04']);
    expect(offers('20s')).toEqual(['192X', '202X']);
    expect(readShorthand('late 60s', '2026-06-01')[0]?.readAs).toBe(
      'one of the years 1966 to 1969',
    );
  });

  it.each(['', 'long ago', 'spring', 'about', 'before the war', '1962 1963', 'x'.repeat(61)])(
    'offers nothing for %j',
    (text) => {
      expect(offers(text)).toEqual([]);
    },
  );

  it('offers only what is EDTF', () => {
    const said = [
      'about 62',
      'late 60s',
      '20s',
      'since spring 1971',
      'before 1 Mar 1971',
      '1955-58',
    ];
    for (const edtf of said.flatMap(offers)) expect(readEdtf(edtf).kind).toBe('range');
  });
});

describe('two uncertain dates', () => {
  const range = (earliest: string | null, latest: string | null) => ({ earliest, latest });
  const fifties = range('1950-01-01', '1959-12-31');
  it.each([
    ['BEFORE', fifties, range('1960-01-01', null)],
    ['AFTER', range('1960-01-01', null), fifties],
    ['WITHIN', range('1955-01-01', '1955-12-31'), fifties],
    ['WITHIN', fifties, fifties],
    ['OVERLAPPING', fifties, range('1955-01-01', '1955-12-31')],
    ['OVERLAPPING', fifties, range('1959-12-31', '1962-01-01')],
    ['UNDECIDED', fifties, range('1955-01-01', null)],
    ['UNDECIDED', range(null, null), fifties],
  ] as const)('%s', (relation, first, second) => {
    expect(compareDates(first, second)).toBe(relation);
  });
});
