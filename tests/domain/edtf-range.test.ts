import { describe, expect, it } from 'vitest';
import { edtfRange } from '../../src/features/provenance/edtfRange.js';

const days = (text: string) => {
  const range = edtfRange(text);
  return range.kind === 'range' ? [range.earliestOn, range.latestOn] : range.why;
};

describe('the days that an EDTF date allows', () => {
  // Forms: ISO 8601-2:2019 and the Library of Congress EDTF specification, levels 0 to 2.
  it.each([
    ['1985', '1985-01-01', '1985-12-31'],
    ['1984-02', '1984-02-01', '1984-02-29'],
    ['1985-04-12', '1985-04-12', '1985-04-12'],
    ['1985-04-12T23:20:30Z', '1985-04-12', '1985-04-12'],
    ['201X', '2010-01-01', '2019-12-31'],
    ['19XX', '1900-01-01', '1999-12-31'],
    ['1985-XX-XX', '1985-01-01', '1985-12-31'],
    ['1964/2008', '1964-01-01', '2008-12-31'],
    ['[1667,1668,1670..1672]', '1667-01-01', '1672-12-31'],
    ['{1960,1961-12}', '1960-01-01', '1961-12-31'],
    ['1950S2', '1900-01-01', '1999-12-31'],
    ['1953-34', '1953-04-01', '1953-06-30'],
  ])('%s', (text, earliest, latest) => {
    expect(days(text)).toEqual([earliest, latest]);
  });

  it('has no bound where the date is open or its end unknown', () => {
    expect(days('1985-04-12/..')).toEqual(['1985-04-12', null]);
    expect(days('1985-04-12/')).toEqual(['1985-04-12', null]);
    expect(days('../1985')).toEqual([null, '1985-12-31']);
    expect(days('/1985')).toEqual([null, '1985-12-31']);
    expect(days('[..1760-12-03]')).toEqual([null, '1760-12-03']);
    expect(days('[1760-12..]')).toEqual(['1760-12-01', null]);
  });

  it('is wider by one unit on each side where it is about or uncertain', () => {
    expect(days('1984?')).toEqual(['1983-01-01', '1985-12-31']);
    expect(days('1979-08~')).toEqual(['1979-07-01', '1979-09-30']);
    expect(days('2004-06-11%')).toEqual(['2004-06-10', '2004-06-12']);
    expect(days('1984?/2004-06~')).toEqual(['1983-01-01', '2004-07-31']);
    expect(days('196X?')).toEqual(['1959-01-01', '1970-12-31']);
  });

  it('takes a season for either hemisphere', () => {
    expect(days('2001-21')).toEqual(['2001-03-01', '2001-11-30']);
    expect(days('2001-24')).toEqual(['2001-01-01', '2002-02-28']);
  });

  it.each(['', 'spring 1957', '1985-13', '1960/1950', '1985-02-30', 'a'.repeat(81)])(
    'refuses %j in one sentence or two, without what the parser says',
    (text) => {
      const why = days(text);
      expect(typeof why).toBe('string');
      expect(String(why)).not.toMatch(/Syntax|→|undefined/);
      expect(String(why).length).toBeLessThan(300);
    },
  );

  it('refuses a day that is not in the calendar, which the parser would move', () => {
    expect(days('1985-02-29')).toBe('There is no day 29 in month 2 of 1985, which has 28 days.');
  });

  it.each(['-1985', 'Y-17E7', 'Y170000002'])('refuses %s, beyond the years kept', (text) => {
    expect(days(text)).toContain('outside the years 0001 to 9999');
  });
});
