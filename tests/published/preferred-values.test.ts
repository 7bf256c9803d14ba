import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { nearestPreferred } from '../../src/domain/values/nearestPreferred.js';
import { worstDeviation } from '../../src/domain/values/worstDeviation.js';
import { preferredSeries } from '../../src/features/reference/valueTables.js';

const valuesOf = (series: Parameters<typeof preferredSeries.get>[0]): readonly string[] =>
  preferredSeries.get(series)?.values ?? [];

/** IEC 60063:2015: 10^(i/n), rounded to `figures` figures. */
const derived = (count: number, figures: number): string[] =>
  Array.from({ length: count }, (_, i) => (10 ** (i / count)).toFixed(figures - 1));

describe('preferred values of IEC 60063', () => {
  it('has E48, E96 and E192 by the formula, but for 9.20 in place of 9.19 in E192', () => {
    expect(valuesOf('E48')).toEqual(derived(48, 3));
    expect(valuesOf('E96')).toEqual(derived(96, 3));
    expect(valuesOf('E192')).toEqual(derived(192, 3).map((v) => (v === '9.19' ? '9.20' : v)));
  });

  it('has E24 by the formula but for the eight values that the standard keeps from older use', () => {
    const exceptions: Record<string, string> = {
      '2.6': '2.7',
      '2.9': '3.0',
      '3.2': '3.3',
      '3.5': '3.6',
      '3.8': '3.9',
      '4.2': '4.3',
      '4.6': '4.7',
      '8.3': '8.2',
    };
    const expected = derived(24, 2).map((value) => exceptions[value] ?? value);
    expect(valuesOf('E24').map((value) => Number(value).toFixed(1))).toEqual(expected);
  });

  it('thins each coarser series out of the finer one', () => {
    const everySecond = (values: readonly string[]): string[] =>
      values.filter((_, i) => i % 2 === 0);
    expect(valuesOf('E12')).toEqual(everySecond(valuesOf('E24')));
    expect(valuesOf('E6')).toEqual(everySecond(valuesOf('E12')));
    expect(valuesOf('E3')).toEqual(everySecond(valuesOf('E6')));
    expect(valuesOf('E96')).toEqual(everySecond(valuesOf('E192')));
    expect(valuesOf('E48')).toEqual(everySecond(valuesOf('E96')));
  });

  it('serves an obsolete 0.05 µF by 0.047 µF, 6 % less', () => {
    const [nearest] = nearestPreferred(0.05, valuesOf('E12'));
    expect(nearest.value).toBe('0.047');
    expect(nearest.differencePercent).toBeCloseTo(-6, 9);
    // (0.94)(0.9) = 0.846: a part at the low end of its 10 % is 15.4 % short.
    expect(worstDeviation(nearest.differencePercent, 10)).toBeCloseTo(15.4, 9);
  });

  it('offers both neighbours of 250 kΩ within 20 %: 270k and 220k', () => {
    const found = nearestPreferred(250_000, valuesOf('E12'), 20).map(({ value }) => value);
    expect(found).toEqual(['270000', '220000']);
  });

  it('finds a preferred value to be its own nearest, in any decade', () => {
    const exponent = fc.integer({ min: -12, max: 9 });
    fc.assert(
      fc.property(fc.constantFrom(...valuesOf('E96')), exponent, (significand, decade) => {
        const [nearest] = nearestPreferred(Number(`${significand}e${decade}`), valuesOf('E96'));
        expect(Number(nearest.value)).toBe(Number(`${significand}e${decade}`));
      }),
    );
  });

  it('lies never farther off than half the widest gap of the series', () => {
    fc.assert(
      fc.property(fc.double({ min: 1e-9, max: 1e9, noNaN: true }), (value) => {
        const [nearest] = nearestPreferred(value, valuesOf('E12'));
        expect(Math.abs(nearest.differencePercent)).toBeLessThan(12);
      }),
    );
  });

  it('refuses nought, less, and what is boundless', () => {
    for (const value of [0, -1, Number.NaN, Infinity]) {
      expect(() => nearestPreferred(value, valuesOf('E12'))).toThrow(RangeError);
    }
  });
});
