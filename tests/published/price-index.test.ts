import { describe, expect, it } from 'vitest';
import { indexedAmount } from '../../src/domain/worth/indexedAmount.js';
import { shippedIndex } from '../../src/features/priceIndex/priceIndexes.reads.js';

const years = (...points: [period: string, value: string][]) =>
  points.map(([period, value]) => ({ period, value }));

describe('amounts carried on by an index', () => {
  // University of Vermont, EC 11, "How to calculate the CPI and inflation rate" (2005): gasoline at
  // 36 cents in 1972 (index 37.5) is 1.81 dollars of 2004 (index 188.9).
  it('follows the published worked example', () => {
    const points = years(['1972', '37.5'], ['2004', '188.9']);
    expect(indexedAmount(36, '1972-07-01', '2004-07-01', points)?.minorUnits).toBe(181);
  });

  // Bureau of Labor Statistics, CPI Inflation Calculator (data.bls.gov/cgi-bin/cpicalc.pl), its
  // answers as printed in the examples of MATLAB Central File Exchange 14457 (2007): 1 dollar of 1975
  // is 3.2007 of 2000; 100 of 1913 are 2055.5455 of 2007, 100 of 2000 118.1760, 10 of 1925 116.2851,
  // 1,000 of 1950 8443.9419. Yearly indexes as the Bureau prints them; 203.499 is that of February
  // 2007, which the calculator then took for the year.
  it.each([
    ['1975', '53.8', '2000', '172.2', 100_00, 320_07],
    ['1913', '9.9', '2007', '203.499', 100_00, 2055_55],
    ['2000', '172.2', '2007', '203.499', 100_00, 118_18],
    ['1925', '17.5', '2007', '203.499', 10_00, 116_29],
    ['1950', '24.1', '2007', '203.499', 1000_00, 8443_94],
  ])(
    'gives what the Bureau’s calculator gave for %s',
    (from, first, to, second, cents, expected) => {
      const points = years([from, first], [to, second]);
      const indexed = indexedAmount(cents, `${from}-07-01`, `${to}-07-01`, points);
      expect(indexed?.minorUnits).toBe(expected);
    },
  );

  // Bureau of Labor Statistics, "Using the Consumer Price Index for Escalation" (January 1989), page
  // 5, as reprinted by the Louisville Free Public Library: from 113.8 to 118.5 is 4.1 percent.
  it('escalates as the Bureau’s leaflet does', () => {
    const points = years(['1987', '113.8'], ['1988', '118.5']);
    const indexed = indexedAmount(1000_00, '1987-06-01', '1988-06-01', points);
    expect(((indexed?.minorUnits ?? 0) / 1000_00 - 1) * 100).toBeCloseTo(4.1, 1);
  });

  // Bureau of Labor Statistics: yearly indexes printed to one decimal (1963 30.6) and 313.689 for
  // 2024; our table has means of the months, 30.625, so that cents differ (3072.87).
  it('takes 300.00 dollars of 1963 to those of 2024', () => {
    const printed = years(['1963', '30.6'], ['2024', '313.689']);
    expect(indexedAmount(300_00, '1963-01-01', '2024-12-31', printed)?.minorUnits).toBe(3075_38);
    const { points } = shippedIndex;
    expect(indexedAmount(300_00, '1963-01-01', '2024-12-31', points)?.minorUnits).toBe(3072_87);
  });

  it('ships a table without a gap, from 1945, that agrees with the printed figures', () => {
    const { points } = shippedIndex;
    expect(points.map(({ period }) => Number(period))).toEqual(
      points.map((_, index) => 1945 + index),
    );
    // Printed by the Bureau to one decimal (three since 2007).
    for (const [year, printed, slack] of [
      ['1963', 30.6, 0.05],
      ['1982', 96.5, 0.05],
      ['2000', 172.2, 0.05],
      ['2020', 258.811, 0.001],
    ] as const) {
      const value = Number(points.find(({ period }) => period === year)?.value);
      expect(Math.abs(value - printed)).toBeLessThanOrEqual(slack);
    }
  });
});
