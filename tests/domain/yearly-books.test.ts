import { expect, it } from 'vitest';
import { lastDayOf, latestMonths } from '../../src/domain/worth/yearlyBooks.js';

it('the latest months run over the turn of a year, from the first day on', () => {
  expect(latestMonths('2025-11-30', '2026-02-01', 24)).toEqual([
    '2025-11',
    '2025-12',
    '2026-01',
    '2026-02',
  ]);
  expect(latestMonths('1990-01-01', '2026-02-01', 2)).toEqual(['2026-01', '2026-02']);
});

// The Gregorian calendar: 2028 is a leap year, 2100 is none.
it.each([
  ['2026-02', '2026-02-28'],
  ['2028-02', '2028-02-29'],
  ['2100-02', '2100-02-28'],
  ['2026-12', '2026-12-31'],
])('the last day of %s is %s', (month, day) => {
  expect(lastDayOf(month)).toBe(day);
});
