import { describe, expect, it } from 'vitest';
import { convertMoney } from '../../src/domain/money/convertMoney.js';
import { exponentOf } from '../../src/features/rates/rateTable.reads.js';

/**
 * The irrevocable rates of Council Regulation (EC) No 2866/98 (1 EUR = 1.95583 DEM = 40.3399 BEF =
 * 6.55957 FRF) and the rules of Council Regulation (EC) No 1103/97, articles 4 and 5: six
 * significant figures, no rounded inverse, half-way results up.
 */
const perEuro = (toCurrency: string, rate: string) => ({
  id: toCurrency,
  fromCurrency: 'EUR',
  toCurrency,
  rate,
  ratedOn: '1998-12-31',
});
const decimals = (currency: string) => (currency === 'BEF' ? 0 : 2);
const [mark, franc] = [perEuro('DEM', '1.95583'), perEuro('BEF', '40.3399')];

describe('conversion by the rules for the euro', () => {
  it('multiplies by the rate towards the national unit', () => {
    expect(convertMoney({ minorUnits: 100_00, currency: 'EUR' }, mark, decimals)).toEqual({
      minorUnits: 195_58,
      currency: 'DEM',
    });
  });

  it('divides by the rate towards the euro, never by way of a rounded inverse', () => {
    // By the inverse rounded to 0.511292 ten million marks would come to 5,112,920.00.
    expect(
      convertMoney({ minorUnits: 10_000_000_00, currency: 'DEM' }, mark, decimals).minorUnits,
    ).toBe(5_112_918_81);
    expect(convertMoney({ minorUnits: 1000, currency: 'BEF' }, franc, decimals).minorUnits).toBe(
      24_79,
    );
  });

  it('rounds what lies half-way up', () => {
    const half = { ...mark, toCurrency: 'USD', rate: '1.005' };
    expect(convertMoney({ minorUnits: 100, currency: 'EUR' }, half, exponentOf).minorUnits).toBe(
      101,
    );
  });
});
