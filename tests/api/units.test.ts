import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { compareDecimals } from '../../src/domain/decimal/compareDecimals.js';
import { convertUnit, ucumProblem } from '../../src/features/readings/ucum.js';

describe('units are UCUM', () => {
  it.each(['V', 'mA', 'uF', 'kOhm', 'MHz', 'mS', 'uS', 'W', 'dB', '%', '1', 'Cel', 'mA/V', 'min'])(
    'takes %s',
    (unit) => {
      expect(ucumProblem(unit)).toBeNull();
    },
  );

  it.each(['', 'volts', 'umhos', 'µF', ' V', '__proto__', 'constructor', '((((m))))((((m))))/m'])(
    'refuses %j in a sentence',
    (unit) => {
      expect(ucumProblem(unit)).toMatch(/not a unit of UCUM/);
    },
  );

  it('answers at once whatever it is sent', () => {
    expect(ucumProblem('('.repeat(1_000_000))).toBe(
      'This unit is 1000000 characters long; 40 is the most.',
    );
    const unitLike = fc.string({
      unit: fc.constantFrom(...'mkOhVAFs10*/.()[]{}^+-\'"_%'),
      maxLength: 40,
    });
    fc.assert(
      fc.property(unitLike, (unit) => {
        const startedMs = performance.now();
        ucumProblem(unit);
        expect(performance.now() - startedMs).toBeLessThan(500);
      }),
    );
  });
});

describe('a number in another unit', () => {
  // UCUM 2.1, table of prefixes: m 10^-3, u 10^-6, k 10^3; table 2: min = 60 s, h = 60 min.
  it.each([
    ['5.21', 'mS', 'uS', '5210'],
    ['5210', 'uS', 'mS', '5.21'],
    ['0.30', 'A', 'mA', '300'],
    ['4.7', 'kOhm', 'Ohm', '4700'],
    ['60', 'min', 'h', '1'],
    ['90', 's', 'min', '1.5'],
    ['50', '%', '1', '0.5'],
    ['5.2', 'mA/V', 'mS', '5.2'],
    ['25', 'Cel', '[degF]', '77'],
    ['-0.5', 'V', 'mV', '-500'],
  ])('%s %s is, in %s, %s', (value, from, to, expected) => {
    expect(convertUnit(value, from, to)).toBe(expected);
  });

  it('has no answer for another quantity, another thing or no number', () => {
    expect(convertUnit('1', 'V', 'A')).toBeNull();
    expect(convertUnit('1', 'V', '1')).toBeNull();
    expect(convertUnit('1', 'V', 'volts')).toBeNull();
    expect(convertUnit('a lot', 'V', 'mV')).toBeNull();
  });

  it('comes back to what it was through any prefix', () => {
    const prefixes = fc.constantFrom('p', 'n', 'u', 'm', '', 'k', 'M', 'G');
    const number = fc.integer({ min: -1_000_000, max: 1_000_000 });
    fc.assert(
      fc.property(number, prefixes, prefixes, (whole, from, to) => {
        const value = `${whole < 0 ? '-' : ''}${Math.abs(whole)}.25`;
        const there = convertUnit(value, `${from}V`, `${to}V`) ?? '';
        expect(compareDecimals(convertUnit(there, `${to}V`, `${from}V`) ?? '', value)).toBe(0);
      }),
    );
  });
});
