import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { roundedQuotient } from '../../src/domain/decimal/roundedQuotient.js';
import { convertMoney } from '../../src/domain/money/convertMoney.js';
import { latestRate } from '../../src/domain/money/latestRate.js';
import { sumInCurrency } from '../../src/domain/money/sumInCurrency.js';
import { exponentOf } from '../../src/features/rates/rateTable.reads.js';

const rate = (
  fromCurrency: string,
  toCurrency: string,
  figure: string,
  ratedOn = '2026-01-05',
) => ({
  id: `${fromCurrency}${toCurrency}${ratedOn}`,
  fromCurrency,
  toCurrency,
  rate: figure,
  ratedOn,
});
const day = '2026-06-01';

describe('conversion by a named rate', () => {
  it.each([
    ['EUR', 1_00, 'JPY', '163.5', 164],
    ['JPY', 164, 'EUR', '0.00611621', 1_00],
    ['EUR', 10_00, 'KWD', '0.3318', 3_318],
    ['KWD', 3_318, 'JPY', '492.7', 1_635],
    ['EUR', -1_00, 'JPY', '163.5', -164],
  ])('%s %i is, in %s at %s, %i minor units', (from, minorUnits, to, figure, expected) => {
    const converted = convertMoney(
      { minorUnits, currency: from },
      rate(from, to, figure),
      exponentOf,
    );
    expect(converted).toEqual({ minorUnits: expected, currency: to });
  });

  it('refuses a rate between other currencies, and a rate of nothing', () => {
    const euros = { minorUnits: 1, currency: 'EUR' };
    expect(() => convertMoney(euros, rate('GBP', 'USD', '1.3'), exponentOf)).toThrow(/no EUR/);
    expect(() => convertMoney(euros, rate('EUR', 'USD', '0'), exponentOf)).toThrow(/above zero/);
  });

  it('errs by half a minor unit at the most', () => {
    const amounts = fc.integer({ min: -1e9, max: 1e9 });
    fc.assert(
      fc.property(amounts, fc.integer({ min: 1, max: 1e9 }), (minorUnits, millionths) => {
        const { minorUnits: got } = convertMoney(
          { minorUnits, currency: 'EUR' },
          rate('EUR', 'USD', (millionths / 1e6).toFixed(6)),
          exponentOf,
        );
        const twice = 2n * (BigInt(got) * 1_000_000n - BigInt(minorUnits) * BigInt(millionths));
        expect(twice <= 1_000_000n && twice >= -1_000_000n).toBe(true);
      }),
    );
    expect(roundedQuotient(-5n, 2n)).toBe(-3n);
    expect(roundedQuotient(5n, -2n)).toBe(-3n);
  });
});

describe('which rate is taken', () => {
  const rates = [
    rate('GBP', 'EUR', '1.10', '2025-01-01'),
    rate('EUR', 'GBP', '0.84', '2026-01-01'),
    rate('GBP', 'EUR', '1.19', '2026-01-01'),
    rate('GBP', 'EUR', '1.30', '2026-12-01'),
  ];

  it('is the newest up to the day, in the direction asked for where both are of one day', () => {
    expect(latestRate(rates, 'GBP', 'EUR', day)?.rate).toBe('1.19');
    expect(latestRate(rates, 'EUR', 'GBP', day)?.rate).toBe('0.84');
    expect(latestRate(rates, 'GBP', 'EUR', '2024-12-31')).toBeNull();
  });
});

describe('sums across currencies', () => {
  const rates = [rate('GBP', 'EUR', '1.2')];
  const money = fc.record({
    minorUnits: fc.integer({ min: -1e6, max: 1e6 }),
    currency: fc.constantFrom('EUR', 'GBP', 'JPY'),
  });

  it('are refused without a rate, naming what is missing', () => {
    const amounts = [
      { minorUnits: 1, currency: 'EUR' },
      { minorUnits: 1, currency: 'JPY' },
    ];
    expect(sumInCurrency(amounts, 'EUR', { rates, day, exponentOf })).toMatchObject({
      kind: 'REFUSED',
      missing: ['JPY'],
    });
  });

  it('never mix currencies: a sum is in its own currency, and every other has a named rate', () => {
    fc.assert(
      fc.property(fc.array(money), (amounts) => {
        const sum = sumInCurrency(amounts, 'EUR', { rates, day, exponentOf });
        const others = new Set(amounts.map(({ currency }) => currency));
        expect(sum.kind).toBe(others.has('JPY') ? 'REFUSED' : 'SUM');
        if (sum.kind === 'REFUSED') return;
        expect(sum.total.currency).toBe('EUR');
        expect(sum.usedRates).toHaveLength(others.has('GBP') ? 1 : 0);
        const plain = (code: string) =>
          amounts
            .filter(({ currency }) => currency === code)
            .reduce((total, { minorUnits }) => total + minorUnits, 0);
        expect(Math.abs(sum.total.minorUnits - plain('EUR') - plain('GBP') * 1.2)).toBeLessThan(
          0.6,
        );
      }),
    );
  });
});
