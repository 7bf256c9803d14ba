import { describe, expect, it } from 'vitest';
import { daysInMonth } from '../../src/domain/dates/daysInMonth.js';
import { monthByName } from '../../src/domain/dates/monthByName.js';

describe('the calendar, against the one in the language', () => {
  // ECMA-262, "Time-related constants and year number": the proleptic Gregorian calendar.
  it('gives every month from 1600 to 2400 its days', () => {
    for (let year = 1600; year <= 2400; year += 1) {
      for (let month = 1; month <= 12; month += 1) {
        const lastDay = new Date(Date.UTC(year, month, 0)).getUTCDate();
        expect(daysInMonth(year, month), `${year}-${month}`).toBe(lastDay);
      }
    }
  });

  // Unicode CLDR month names as `Intl.DateTimeFormat` gives them.
  it.each(['en', 'en-GB', 'de', 'de-AT'])('knows the month names of CLDR for %s', (locale) => {
    for (const width of ['long', 'short'] as const) {
      const format = new Intl.DateTimeFormat(locale, { month: width, timeZone: 'UTC' });
      const inDate = new Intl.DateTimeFormat(locale, {
        month: width,
        day: 'numeric',
        timeZone: 'UTC',
      });
      for (let month = 1; month <= 12; month += 1) {
        const firstOfMonth = Date.UTC(1971, month - 1, 1);
        const written = inDate.formatToParts(firstOfMonth).find((part) => part.type === 'month');
        for (const name of [format.format(firstOfMonth), written?.value ?? '']) {
          expect(monthByName(name.replace(/\.$/, '')), name).toBe(month);
        }
      }
    }
  });
});
