import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { addMoney } from '../../src/domain/money/addMoney.js';
import { formatAmount } from '../../src/domain/money/formatAmount.js';
import { parseAmount } from '../../src/domain/money/parseAmount.js';
import { sumByCurrency } from '../../src/domain/money/sumByCurrency.js';

const eur = (minorUnits: number) => ({ minorUnits, currency: 'EUR' });
const jpy = (minorUnits: number) => ({ minorUnits, currency: 'JPY' });

describe('adding money', () => {
  it('adds amounts of one currency', () => {
    expect(addMoney(eur(1250), eur(-50))).toEqual(eur(1200));
  });

  it('never mixes currencies', () => {
    expect(() => addMoney(eur(1), jpy(1))).toThrow(/EUR and JPY.*exchange rate/);
    expect(sumByCurrency([jpy(3), eur(1), eur(2), jpy(4)])).toEqual([eur(3), jpy(7)]);
    expect(sumByCurrency([])).toEqual([]);
  });

  it('refuses a sum that cannot be kept exactly', () => {
    expect(() => addMoney(eur(Number.MAX_SAFE_INTEGER), eur(1))).toThrow(RangeError);
  });
});

describe('reading and writing amounts', () => {
  it.each([
    ['12.50', 2, 1250],
    ['12.5', 2, 1250],
    [' 12 ', 2, 1200],
    ['-0.01', 2, -1],
    ['+7', 0, 7],
    ['1.234', 3, 1234],
    ['1.0001', 4, 10001],
    ['-0.00', 2, 0],
    ['90071992547409.91', 2, Number.MAX_SAFE_INTEGER],
  ])('reads %s at %i decimals as %i minor units', (text, exponent, minorUnits) => {
    expect(parseAmount(text, exponent)).toEqual({ kind: 'amount', minorUnits });
  });

  it.each([
    ['', 2, /No amount/],
    ['12.505', 2, /3 decimals.*at most 2/],
    ['12.0', 0, /no decimals/],
    ['1,250', 2, /“,”.*thousands/],
    ['1,250.00', 2, /thousands divided/],
    ['1 250', 2, /thousands divided/],
    ['1’250’000', 2, /thousands divided/],
    ['€ 12', 2, /no currency sign/],
    ['12.', 2, /not an amount/],
    ['1e3', 2, /not an amount/],
    ['90071992547409.92', 2, /too large/],
  ])('refuses “%s” at %i decimals with the reason', (text, exponent, why) => {
    expect(parseAmount(text, exponent)).toMatchObject({
      kind: 'refused',
      why: expect.stringMatching(why),
    });
  });

  it('reads a decimal comma only where it is announced', () => {
    expect(parseAmount('12,50', 2, ',')).toEqual({ kind: 'amount', minorUnits: 1250 });
    expect(parseAmount('12.50', 2, ',').kind).toBe('refused');
  });

  it('writes all decimals of the currency', () => {
    expect(formatAmount(5, 2)).toBe('0.05');
    expect(formatAmount(-1250, 2)).toBe('-12.50');
    expect(formatAmount(700, 0)).toBe('700');
    expect(formatAmount(1, 4)).toBe('0.0001');
    expect(() => formatAmount(0.5, 2)).toThrow(RangeError);
  });

  it('reads back what it wrote', () => {
    fc.assert(
      fc.property(fc.maxSafeInteger(), fc.constantFrom(0, 2, 3, 4), (minorUnits, exponent) => {
        const parsed = parseAmount(formatAmount(minorUnits, exponent), exponent);
        expect(parsed).toEqual({ kind: 'amount', minorUnits });
      }),
    );
  });
});
