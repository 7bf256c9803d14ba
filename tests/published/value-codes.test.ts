import resistorData from 'resistor-data';
import { describe, expect, it } from 'vitest';
import { decodeColours } from '../../src/domain/values/decodeColours.js';
import { decodeLetters } from '../../src/domain/values/decodeLetters.js';
import { readDateCode } from '../../src/domain/values/readDateCode.js';
import { weekSpan } from '../../src/domain/values/weekSpan.js';
import {
  colourCode,
  dateCodeFormats,
  letterCode,
} from '../../src/features/reference/valueTables.js';

const byColours = (words: string) => {
  const decoded = decodeColours(words.toUpperCase().split(' '), colourCode.colours);
  return decoded.kind === 'read' ? decoded.value : decoded.why;
};
const byLetters = (text: string, on?: 'RESISTOR' | 'CAPACITOR') => {
  const decoded = decodeLetters(text, letterCode, on);
  return decoded.kind === 'read'
    ? `${decoded.value.value} ${decoded.value.unit} ${decoded.value.tolerancePercent ?? '-'}`
    : decoded.why;
};

describe('colour code of IEC 60062 (worked examples of published charts)', () => {
  it.each([
    ['brown black orange gold', '10000', '5'],
    ['red red blue brown brown', '2260', '1'],
    ['yellow violet orange silver', '47000', '10'],
    ['blue red red', '6200', '20'],
    ['yellow violet gold gold', '4.7', '5'],
  ])('%s is %s Ω ± %s %%', (colours, ohms, tolerancePercent) => {
    expect(byColours(colours)).toMatchObject({ ohms, tolerancePercent });
  });

  it('agrees with the npm package resistor-data on figures and multipliers (its notation loses decimals, so none below 1)', () => {
    const figures = 'black brown red orange yellow green blue violet grey white'.split(' ');
    for (const first of figures.slice(1)) {
      for (const multiplier of figures.slice(0, 7)) {
        const bands = [first, 'violet', multiplier, 'gold'];
        const [notation] = resistorData.bandsToNotation(bands);
        const own = byColours(bands.join(' '));
        expect(own).toHaveProperty('ohms');
        if (typeof own !== 'string') expect(Number(own.ohms)).toBeCloseTo(inOhms(notation), 6);
      }
    }
  });

  it('calls the tolerances that charts disagree on unconfirmed, and the others not', () => {
    const doubtful = colourCode.colours.filter((one) => !one.isToleranceConfirmed);
    expect(doubtful.map(({ colour }) => colour)).toEqual(['ORANGE', 'YELLOW', 'GREY']);
  });

  it('says what is wrong with bands read from the wrong end, or too few', () => {
    expect(byColours('gold orange violet yellow')).toBe('gold stands for no figure (band 1).');
    expect(byColours('red red')).toMatch(/3 to 6 colours/);
  });
});

/** 4k7, 470r, 1m as the package writes them. */
function inOhms(notation: string): number {
  const [, whole = '', letter = 'r', fraction = ''] = /^(\d+)([a-z]?)(\d*)$/i.exec(notation) ?? [];
  const power = { r: 0, k: 3, m: 6 }[letter.toLowerCase() || 'r'] ?? 0;
  return Number(`${whole}.${fraction || '0'}e${power}`);
}

describe('letter code of IEC 60062', () => {
  it.each([
    ['4R7', '4.7 Ohm -'],
    ['2K2', '2200 Ohm -'],
    ['1M0', '1000000 Ohm -'],
    ['R47', '0.47 Ohm -'],
    ['4K7J', '4700 Ohm 5'],
    ['470R', '470 Ohm -'],
    ['2n2', '0.0000000022 F -'],
    ['µ1', '0.0000001 F -'],
    ['47pK', '0.000000000047 F 10'],
    ['104', '0.0000001 F -'],
  ])('%s says %s', (text, expected) => {
    expect(byLetters(text)).toBe(expected);
  });

  it('asks what 473K is printed on, for it may be a tolerance or a multiplier', () => {
    expect(byLetters('473K')).toMatch(/Say which it is on/);
    expect(byLetters('473K', 'CAPACITOR')).toBe('0.000000047 F 10');
    expect(byLetters('473K', 'RESISTOR')).toBe('473000 Ohm -');
  });

  it.each(['', 'K', 'hello', '4Q7', '99999999K'])('refuses “%s” with a reason', (text) => {
    expect(byLetters(text)).toMatch(/is no value code|stands for no multiplier/);
  });
});

describe('date codes of components (examples of published articles)', () => {
  const yearsOf = (text: string) => readDateCode(text, dateCodeFormats).map(({ year }) => year);

  it.each([
    ['137634', [1946, 1956, 1966, 1976, 1986]],
    ['190-7215', [1972]],
    ['542', [1945, 1955, 1965, 1975, 1985]],
    ['6210', [1962]],
  ])('%s may be of %j', (text, years) => {
    expect(yearsOf(text)).toEqual(years);
  });

  it('reads 606-4-21 as week 21 of 1964 once other evidence narrows the years', () => {
    const [only, ...others] = readDateCode('606-4-21', dateCodeFormats, { from: 1960, to: 1969 });
    expect(only).toMatchObject({ maker: '606', year: 1964, week: 21 });
    expect(others).toEqual([]);
  });

  it('returns both splits of 2206542, with neither preferred', () => {
    const makers = new Set(readDateCode('2206542', dateCodeFormats).map(({ maker }) => maker));
    expect(makers).toEqual(new Set(['220', '2206']));
  });

  it('spans a week by both ways of counting it', () => {
    expect(weekSpan(1962, 10)).toEqual({ earliest: '1962-03-05', latest: '1962-03-11' });
    expect(weekSpan(1976, 34)).toEqual({ earliest: '1976-08-16', latest: '1976-08-25' });
    expect(weekSpan(1963, 53)).toEqual({ earliest: '1963-12-31', latest: '1963-12-31' });
    expect(weekSpan(1963, 54)).toBeNull();
  });

  it('has an example for each way of writing that the way itself reads', () => {
    for (const { format, example } of dateCodeFormats) {
      expect(readDateCode(example, dateCodeFormats).map((one) => one.format)).toContain(format);
    }
  });

  it('takes 60 for no week, and words for no code', () => {
    expect(readDateCode('137660', dateCodeFormats)).toEqual([]);
    expect(readDateCode('made in June', dateCodeFormats)).toEqual([]);
  });
});
