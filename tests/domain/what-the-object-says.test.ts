import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { dayNumber, dateOfDay } from '../../src/domain/dates/dayNumber.js';
import { serialDate } from '../../src/domain/provenance/serialDate.js';

const dated = (serialNumber: string, earliest: string, latest = earliest) => ({
  serialNumber,
  earliest,
  latest,
});

describe('a serial number among dated ones of the same model', () => {
  const known = [
    dated('A100', '1960-01-01'),
    dated('A300', '1960-07-19'),
    dated('A200', '1960-04-10'),
  ];

  it('lies in proportion between its neighbours, with the spread of what is known', () => {
    // 100 days for 100 numbers on either side: the one in the middle lies where its neighbours say.
    expect(serialDate('A150', known)).toEqual({
      kind: 'DATED',
      earliest: '1960-01-01',
      latest: '1960-04-10',
      estimate: { earliest: '1960-02-20', latest: '1960-02-20' },
      spreadDays: 0,
      neighbours: ['A100', 'A200'],
    });
    const uneven = [...known.slice(0, 2), dated('A200', '1960-03-31')];
    expect(serialDate('A150', uneven)).toMatchObject({ spreadDays: 10 });
  });

  it('has one bound beyond the last known number, and no estimate', () => {
    expect(serialDate('A900', known)).toMatchObject({
      earliest: '1960-07-19',
      latest: null,
      estimate: null,
    });
  });

  it('says why nothing follows: other letters, no number, numbers out of order', () => {
    expect(serialDate('B150', known).kind).toBe('NONE');
    expect(serialDate('none', known).kind).toBe('NONE');
    expect(serialDate('A150', [...known, dated('A050', '1961-01-01')])).toEqual({
      kind: 'OUT_OF_ORDER',
      serialNumbers: ['A050', 'A100'],
    });
  });

  it('keeps the order of the numbers and stays between the neighbours', () => {
    const numbers = fc.uniqueArray(fc.integer({ min: 1, max: 500 }), {
      minLength: 2,
      maxLength: 8,
    });
    fc.assert(
      fc.property(numbers, fc.array(fc.nat(40), { minLength: 8, maxLength: 8 }), (set, steps) => {
        let day = dayNumber('1955-01-01');
        const points = [...set]
          .sort((a, b) => a - b)
          .map((number, index) => {
            day += steps[index] ?? 0;
            return dated(`N${number}`, dateOfDay(day), dateOfDay(day + 20));
          });
        let before = '';
        for (let number = Math.min(...set); number <= Math.max(...set); number++) {
          const found = serialDate(`N${number}`, points);
          if (found.kind !== 'DATED' || !found.estimate) throw new Error('It has two neighbours.');
          expect(found.estimate.earliest <= found.estimate.latest).toBe(true);
          expect(found.estimate.earliest >= (found.earliest ?? '')).toBe(true);
          expect(found.estimate.latest <= (found.latest ?? '')).toBe(true);
          expect(found.estimate.latest >= before).toBe(true);
          before = found.estimate.latest;
        }
      }),
      { numRuns: 50 },
    );
  });
});
