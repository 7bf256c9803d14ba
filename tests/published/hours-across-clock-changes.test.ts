// The check here is the IANA time zone database as `Intl` carries it, not the library that the
// arithmetic uses. Dates of the clock changes: IANA rules for the zones named.
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { countedSlices } from '../../src/domain/hours/countedSlices.js';
import { tallySeconds } from '../../src/domain/hours/tallySeconds.js';
import { tallySecondsByWeek } from '../../src/domain/hours/tallySecondsByWeek.js';
import { instantAt, instantsShowing, wallClockAt } from '../support/localClock.js';
import { HOUR_MS, MINUTE_MS, workSession } from '../support/workStory.js';

const LATER_MS = Date.UTC(2040, 0, 1);

function worked(zone: string, startedAtMs: number, endedAtMs: number) {
  return countedSlices([workSession({ zone, startedAtMs, endedAtMs })], LATER_MS).slices;
}

function secondsByMonth(zone: string, startedAtMs: number, endedAtMs: number) {
  return Object.fromEntries(
    tallySeconds(worked(zone, startedAtMs, endedAtMs)).map((row) => [row.localMonth, row.seconds]),
  );
}

describe('a night at the bench from 22:00 to 06:00', () => {
  it.each([
    ['Europe/Berlin', '2024-03-30', '2024-03-31', 7],
    ['Europe/Berlin', '2024-10-26', '2024-10-27', 9],
    ['America/New_York', '2024-03-09', '2024-03-10', 7],
    ['America/New_York', '2024-11-02', '2024-11-03', 9],
    ['Australia/Lord_Howe', '2024-04-06', '2024-04-07', 8.5],
    ['Australia/Lord_Howe', '2024-10-05', '2024-10-06', 7.5],
    ['Europe/Berlin', '2024-06-01', '2024-06-02', 8],
  ])('%s, %s to %s, lasts %d hours', (zone, evening, morning, hours) => {
    const start = instantAt(`${evening}T22:00`, zone);
    const end = instantAt(`${morning}T06:00`, zone);
    const [month, ...others] = tallySeconds(worked(zone, start, end));
    expect(others).toEqual([]);
    expect(month).toMatchObject({ localMonth: evening.slice(0, 7), seconds: hours * 3600 });
  });
});

describe('the hour that comes twice', () => {
  it.each([
    ['Europe/Berlin', '2024-10-27T02:30', 60],
    ['America/New_York', '2024-11-03T01:30', 60],
    ['Australia/Lord_Howe', '2024-04-07T01:45', 30],
  ])('in %s, %s to %s again is worked time', (zone, localMinute, minutes) => {
    const [first, second] = instantsShowing(localMinute, zone);
    expect(worked(zone, first!, second!)).toMatchObject([
      { startedAtMs: first, endedAtMs: second },
    ]);
    expect(second! - first!).toBe(minutes * MINUTE_MS);
  });
});

describe('the leap day', () => {
  const zones = ['Europe/Berlin', 'America/New_York', 'Australia/Lord_Howe', 'Asia/Kathmandu'];
  it.each(zones)('belongs to February 2024 in %s', (zone) => {
    expect(
      secondsByMonth(
        zone,
        instantAt('2024-02-28T12:00', zone),
        instantAt('2024-03-01T12:00', zone),
      ),
    ).toEqual({ '2024-02': 36 * 3600, '2024-03': 12 * 3600 });
  });
  it.each(zones)('is missing from February 2023 in %s', (zone) => {
    expect(
      secondsByMonth(
        zone,
        instantAt('2023-02-28T12:00', zone),
        instantAt('2023-03-01T12:00', zone),
      ),
    ).toEqual({ '2023-02': 12 * 3600, '2023-03': 12 * 3600 });
  });
});

describe('the end of a month', () => {
  it('falls at the local midnight, half a day apart in two zones', () => {
    const start = Date.UTC(2024, 4, 31, 8);
    const end = Date.UTC(2024, 5, 1, 8);
    expect(secondsByMonth('America/New_York', start, end)).toEqual({
      '2024-05': 20 * 3600,
      '2024-06': 4 * 3600,
    });
    expect(secondsByMonth('Australia/Lord_Howe', start, end)).toEqual({
      '2024-05': 5.5 * 3600,
      '2024-06': 18.5 * 3600,
    });
  });

  it('is the first midnight where the clock goes back to it (Havana, 1 November 2020)', () => {
    const [first, second] = instantsShowing('2020-11-01T00:00', 'America/Havana');
    expect(second! - first!).toBe(HOUR_MS);
    expect(secondsByMonth('America/Havana', first! - HOUR_MS, second! + HOUR_MS)).toEqual({
      '2020-10': 3600,
      '2020-11': 7200,
    });
  });

  it('is one o’clock where the clock skips midnight (Amman, 1 April 2016)', () => {
    expect(instantsShowing('2016-04-01T00:30', 'Asia/Amman')).toEqual([]);
    const one = instantAt('2016-04-01T01:00', 'Asia/Amman');
    expect(secondsByMonth('Asia/Amman', one - HOUR_MS, one + HOUR_MS)).toEqual({
      '2016-03': 3600,
      '2016-04': 3600,
    });
  });

  it('is where Intl says, minute by minute, in any zone and year', () => {
    const zones = Intl.supportedValuesOf('timeZone');
    fc.assert(
      fc.property(
        fc.constantFrom(...zones),
        fc.integer({ min: 1975, max: 2035 }),
        fc.integer({ min: 0, max: 11 }),
        fc.integer({ min: -900, max: 900 }),
        (zone, year, month, offsetMinutes) => {
          const start = Date.UTC(year, month, 1) + offsetMinutes * MINUTE_MS;
          // Clocks that went back over a midnight gave a month two beginnings; the first one counts.
          const expected: Record<string, number> = {};
          let latest = '';
          for (let minute = -120; minute < 240; minute += 1) {
            const shown = wallClockAt(start + minute * MINUTE_MS, zone).slice(0, 7);
            if (shown > latest) latest = shown;
            if (minute >= 0) expected[latest] = (expected[latest] ?? 0) + 60;
          }
          const end = start + 240 * MINUTE_MS;
          expect(secondsByMonth(zone, start, end)).toEqual(expected);
        },
      ),
      { numRuns: 300 },
    );
  }, 30_000);
});

describe('ISO 8601 weeks', () => {
  // Dates commonly used to explain ISO 8601 week numbering.
  it.each([
    ['2005-01-01', '2004-W53'],
    ['2007-12-31', '2008-W01'],
    ['2010-01-03', '2009-W53'],
    ['2024-12-30', '2025-W01'],
  ])('%s lies in %s', (date, localWeek) => {
    const noon = instantAt(`${date}T12:00`, 'Australia/Lord_Howe');
    const rows = tallySecondsByWeek(worked('Australia/Lord_Howe', noon, noon + HOUR_MS));
    expect(rows).toMatchObject([{ localWeek, seconds: 3600 }]);
  });

  it('end at midnight between Sunday and Monday, through a clock change', () => {
    const zone = 'Europe/Berlin';
    const start = instantAt('2024-10-27T00:00', zone);
    const rows = tallySecondsByWeek(worked(zone, start, instantAt('2024-10-28T06:00', zone)));
    expect(rows.map((row) => [row.localWeek, row.seconds / 3600])).toEqual([
      ['2024-W43', 25],
      ['2024-W44', 6],
    ]);
  });

  it('refuse a zone nobody knows', () => {
    expect(() => tallySecondsByWeek(worked('Mars/Olympus', 0, HOUR_MS))).toThrow(
      /not a known time zone/,
    );
  });
});
