import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { localDateProblems } from '../../src/domain/dates/localDateProblems.js';
import { readWrittenDate } from '../../src/domain/dates/readWrittenDate.js';

const why = (text: string, ...more: ['DAY_FIRST' | 'MONTH_FIRST' | null, string?]) => {
  const read = readWrittenDate(text, ...more);
  return read.kind === 'unreadable' ? read.why : read.kind;
};

describe('dates as people write them', () => {
  it.each([
    ['2024-03-01', '2024-03-01'],
    ['2024/3/1', '2024-03-01'],
    ['1.3.2024', '2024-03-01'],
    ['01.03.2024', '2024-03-01'],
    ['1. 3. 2024', '2024-03-01'],
    ['3 Mar 2024', '2024-03-03'],
    ['3-Mar-2024', '2024-03-03'],
    ['3rd March 2024', '2024-03-03'],
    ['March 3, 2024', '2024-03-03'],
    ['Sept. 21st, 1958', '1958-09-21'],
    ['3. März 2024', '2024-03-03'],
    ['24. Dez. 1961', '1961-12-24'],
    ['1961 October 5', '1961-10-05'],
    ['13/04/1971', '1971-04-13'],
    ['04/13/1971', '1971-04-13'],
    ['13-04-1971', '1971-04-13'],
    ['04/04/1971', '1971-04-04'],
    ['29.2.2000', '2000-02-29'],
    ['  2024-03-01 ', '2024-03-01'],
  ])('reads %s as %s', (text, date) => {
    expect(readWrittenDate(text)).toEqual({ kind: 'date', date });
  });

  it('asks about 03/04/1971 instead of guessing', () => {
    expect(readWrittenDate('03/04/1971')).toEqual({
      kind: 'ambiguous',
      candidates: [
        { date: '1971-04-03', readAs: 'day first' },
        { date: '1971-03-04', readAs: 'month first' },
      ],
    });
  });

  it('reads it once the order of the list is known', () => {
    expect(readWrittenDate('03/04/1971', 'DAY_FIRST')).toEqual({
      kind: 'date',
      date: '1971-04-03',
    });
    expect(readWrittenDate('03/04/1971', 'MONTH_FIRST')).toEqual({
      kind: 'date',
      date: '1971-03-04',
    });
  });

  it('does not bend a stated order to make a date fit', () => {
    expect(why('13/04/1971', 'MONTH_FIRST')).toBe('Read month first: There is no month 13.');
  });

  it('reads dots day first, whatever the order of slashes', () => {
    expect(readWrittenDate('3.4.1971', 'MONTH_FIRST')).toEqual({
      kind: 'date',
      date: '1971-04-03',
    });
    expect(why('3.13.1971', null)).toBe('There is no month 13.');
  });

  it('asks for the century of a two-digit year', () => {
    expect(readWrittenDate('3-Mar-24')).toEqual({
      kind: 'ambiguous',
      candidates: [
        { date: '1924-03-03', readAs: 'in the 1900s' },
        { date: '2024-03-03', readAs: 'in the 2000s' },
      ],
    });
  });

  it('settles the century where the other has not come yet, or lacks the day', () => {
    expect(readWrittenDate('13.4.71', null, '2026-11-25')).toEqual({
      kind: 'date',
      date: '1971-04-13',
    });
    expect(readWrittenDate('29 Feb 00')).toEqual({ kind: 'date', date: '2000-02-29' });
  });

  it('offers all four readings of 03/04/24', () => {
    expect(readWrittenDate('03/04/24', null, '2026-11-25')).toMatchObject({
      candidates: [
        { date: '1924-04-03', readAs: 'day first, in the 1900s' },
        { date: '2024-04-03', readAs: 'day first, in the 2000s' },
        { date: '1924-03-04', readAs: 'month first, in the 1900s' },
        { date: '2024-03-04', readAs: 'month first, in the 2000s' },
      ],
    });
    expect(readWrittenDate('04/04/24')).toMatchObject({
      candidates: [{ readAs: 'in the 1900s' }, { readAs: 'in the 2000s' }],
    });
  });

  it.each([
    ['1971', '1971'],
    ['1971-04', '1971-04'],
    ['4/1971', '1971-04'],
    ['April 1971', '1971-04'],
    ['Mai 1971', '1971-05'],
    ['1971 Apr.', '1971-04'],
  ])('keeps %s as the year or month it is', (text, edtf) => {
    expect(readWrittenDate(text)).toEqual({ kind: 'partial', edtf });
  });

  it.each([
    ['31 Feb 2024', 'There is no day 31 in month 2 of 2024, which has 29 days.'],
    ['29.2.1900', 'There is no day 29 in month 2 of 1900, which has 28 days.'],
    ['0.3.2024', 'There is no day 0 in month 3 of 2024, which has 31 days.'],
    ['2024-00-10', 'There is no month 0.'],
    ['1971-13', 'There is no month 13.'],
    ['0000-01-01', 'The year must be 0001 or later.'],
    ['3 Foo 2024', '“Foo” is not the name of a month in English or German.'],
    ['', 'No date is given.'],
  ])('refuses %s with the reason', (text, reason) => {
    expect(why(text, null)).toBe(reason);
  });

  it.each(['last spring', '71-04-13-1', '2024-03/01', '1910/11', 'Mar-24'])(
    'refuses %s and shows how to write it',
    (text) => {
      expect(why(text, null)).toMatch(/write it as 1971-04-03, 3 Apr 1971 or 3\.4\.1971/);
    },
  );

  it('does not repeat an endless text in its answer', () => {
    expect(why('1'.repeat(5000), null).length).toBeLessThan(250);
  });

  it('names both failures when neither order gives a day', () => {
    expect(why('30/02/1971', null)).toBe(
      'Read day first: There is no day 30 in month 2 of 1971, which has 28 days. ' +
        'Read month first: There is no month 30.',
    );
  });

  it('reads back every day however it is written, or lists it among the candidates', () => {
    const days = fc.date({
      min: new Date('1000-01-01T00:00:00Z'),
      max: new Date('9999-12-31T00:00:00Z'),
      noInvalidDate: true,
    });
    fc.assert(
      fc.property(days, (day) => {
        const date = day.toISOString().slice(0, 10);
        const [year = '', month = '', dayOfMonth = ''] = date.split('-');
        expect(localDateProblems(date)).toEqual([]);
        for (const text of [date, `${dayOfMonth}.${month}.${year}`]) {
          expect(readWrittenDate(text)).toEqual({ kind: 'date', date });
        }
        const slashed = readWrittenDate(`${dayOfMonth}/${month}/${year}`);
        if (slashed.kind === 'date') expect(slashed.date).toBe(date);
        else expect(slashed).toMatchObject({ candidates: [{ date, readAs: 'day first' }, {}] });
      }),
    );
  });

  it('holds strict dates to year-month-day', () => {
    expect(localDateProblems('1971-4-3')).toEqual([expect.stringContaining('1971-04-03')]);
    expect(localDateProblems('1971-02-29')).toHaveLength(1);
    expect(localDateProblems('1972-02-29')).toEqual([]);
  });
});
