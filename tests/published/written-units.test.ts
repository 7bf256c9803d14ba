import { createRequire } from 'node:module';
import { describe, expect, it } from 'vitest';
import { ucumUnit } from '../../src/web/locale/ucumUnit.js';
import { typedUnit, withUnit, writtenUnit } from '../../src/web/locale/writtenUnit.js';

interface Ucum {
  getSpecifiedUnit(code: string, mode: 'validate'): { unit: { printSymbol_: string } | null };
}
const { UcumLhcUtils } = createRequire(import.meta.url)('@lhncbc/ucum-lhc') as {
  UcumLhcUtils: { getInstance(): Ucum };
};
const ucum = UcumLhcUtils.getInstance();
/** The library writes exponents as HTML, products with a full stop, and the Greek letter for micro. */
const printSymbol = (code: string): string =>
  (ucum.getSpecifiedUnit(code, 'validate').unit?.printSymbol_ ?? 'no unit')
    .replace(/<sup>(.*?)<\/sup>/g, (_, digits: string) =>
      [...digits].map((digit) => '⁰¹²³⁴⁵⁶⁷⁸⁹'[Number(digit)]).join(''),
    )
    .replaceAll('.', '·')
    // The Greek letter and the micro sign are one by Unicode's compatibility (NFKC).
    .replaceAll('\u03bc', '\u00b5');

describe('units as the trade writes them', () => {
  // The Unified Code for Units of Measure 2.1, column “print symbol” of tables 1 to 4.
  it.each([
    ...['Ohm', 'mOhm', 'kOhm', 'MOhm', 'uF', 'pF', 'uS', 'uA', 'uV', 'mH', 'V', 'mA/V', 'A.h'],
    ...['Cel', '[degF]', 'deg', '%', 'dB', 'm2', '10*3', '[in_i]', '[ppm]', 'Hz', 'min'],
  ])('%s is written as UCUM prints it', (code) => {
    expect(writtenUnit(code)).toBe(printSymbol(code));
  });

  // The short forms are common practice, no source.
  it.each([
    ['dB[W]', 'dBW'],
    ['dB[uV]', 'dBµV'],
  ])('%s names what it refers to: %s', (code, written) => {
    expect(writtenUnit(code)).toBe(written);
    expect(ucumUnit(written)).toBe(code);
  });

  it.each(['Ohm', 'kOhm', 'uF', 'uS', 'Cel', '[degF]', 'm2', 's-1', 'mA/V', 'A.h', 'dB', '1', 'u'])(
    'typed as it is written, %s is sent as UCUM has it',
    (code) => {
      expect(ucumUnit(typedUnit(code))).toBe(code);
      expect(ucumUnit(` ${code} `)).toBe(code);
    },
  );

  it('takes the ohm and micro signs of any keyboard, and leaves alone what it does not know', () => {
    expect(['k\u2126', 'k\u03a9', '\u00b5F', '\u03bcF'].map(ucumUnit)).toEqual([
      'kOhm',
      'kOhm',
      'uF',
      'uF',
    ]);
    expect(['volts', '[weird]', '((', ''].map(writtenUnit)).toEqual(['volts', '[weird]', '((', '']);
    expect(ucumUnit('volts')).toBe('volts');
  });

  it('stand behind a value; a mere number has none, and V{rms} says what it is', () => {
    expect(withUnit('4.7', 'kOhm')).toBe('4.7 kΩ');
    expect(withUnit('0.5', '1')).toBe('0.5');
    expect(withUnit('230', 'V{rms}')).toBe('230 V rms');
  });
});
