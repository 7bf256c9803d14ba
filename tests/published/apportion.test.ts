import { describe, expect, it } from 'vitest';
import { apportion } from '../../src/domain/money/apportion.js';

/**
 * COMAP, For All Practical Purposes, 10th edition (W. H. Freeman), chapter 14, example 6, table
 * 14.5: the vetoed apportionment bill of 1792 by Hamilton's method, 15 states, 120 seats,
 * population 3,615,920. The table gives quotas and seats; the census figures behind them are from
 * memory and are tied to the table by its total and its quotas in the first test.
 */
const TABLE_14_5 = [
  { state: 'New Jersey', population: 179_570, quota: 5.959, seats: 6 },
  { state: 'Virginia', population: 630_560, quota: 20.926, seats: 21 },
  { state: 'Connecticut', population: 236_841, quota: 7.86, seats: 8 },
  { state: 'South Carolina', population: 206_236, quota: 6.844, seats: 7 },
  { state: 'Delaware', population: 55_540, quota: 1.843, seats: 2 },
  { state: 'Vermont', population: 85_533, quota: 2.839, seats: 3 },
  { state: 'Massachusetts', population: 475_327, quota: 15.774, seats: 16 },
  { state: 'North Carolina', population: 353_523, quota: 11.732, seats: 12 },
  { state: 'New Hampshire', population: 141_822, quota: 4.707, seats: 5 },
  { state: 'Pennsylvania', population: 432_879, quota: 14.366, seats: 14 },
  { state: 'Georgia', population: 70_835, quota: 2.351, seats: 2 },
  { state: 'Kentucky', population: 68_705, quota: 2.28, seats: 2 },
  { state: 'Rhode Island', population: 68_446, quota: 2.271, seats: 2 },
  { state: 'Maryland', population: 278_514, quota: 9.243, seats: 9 },
  { state: 'New York', population: 331_589, quota: 11.004, seats: 11 },
];

describe('apportion, against published apportionments by Hamilton’s method', () => {
  it('uses populations that give the total and the quotas of table 14.5', () => {
    const total = TABLE_14_5.reduce((sum, { population }) => sum + population, 0);
    expect(total).toBe(3_615_920);
    for (const { population, quota, state } of TABLE_14_5) {
      expect((population * 120) / total, state).toBeCloseTo(quota, 3);
    }
  });

  it('gives every state of the bill of 1792 its seats', () => {
    const seats = apportion(
      120,
      TABLE_14_5.map(({ population }) => population),
    );
    expect(seats).toEqual(TABLE_14_5.map((row) => row.seats));
  });

  it('gives the same seats from the printed quotas, in thousandths', () => {
    const seats = apportion(
      120,
      TABLE_14_5.map(({ quota }) => Math.round(quota * 1000)),
    );
    expect(seats).toEqual(TABLE_14_5.map((row) => row.seats));
  });

  // James D. Stein, How Math Explains the World, page 229: 37 seats over 14, 23, 45 and 18 per cent.
  it('gives 5, 8, 17 and 7 of 37 seats', () => {
    expect(apportion(37, [14, 23, 45, 18])).toEqual([5, 8, 17, 7]);
  });

  // "Alabama paradox", Usenet net.math, article unc.1964, 15 March 1982: the small state loses a
  // seat as the house grows. A method other than Hamilton's would not show it.
  it('shows the Alabama paradox between 49 and 51 seats', () => {
    expect(apportion(49, [3, 7, 90])).toEqual([2, 3, 44]);
    expect(apportion(51, [3, 7, 90])).toEqual([1, 4, 46]);
  });
});
