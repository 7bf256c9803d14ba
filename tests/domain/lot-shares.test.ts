import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { lotProblems } from '../../src/domain/money/lotProblems.js';
import { lotShares } from '../../src/domain/money/lotShares.js';
import { beforeMaking } from '../../src/domain/provenance/beforeMaking.js';

const euro = (minorUnits: number) => ({ minorUnits, currency: 'EUR' });
const byShare = (...shares: (string | null)[]) =>
  shares.map((statedShare) => ({ statedShare, statedValueMinorUnits: null }));
const byValue = (...values: (number | null)[]) =>
  values.map((statedValueMinorUnits) => ({ statedShare: null, statedValueMinorUnits }));

describe('what falls to each line of a lot', () => {
  it('adds up the extra costs of a currency before it spreads them', () => {
    const shares = lotShares({
      price: euro(10),
      extraCosts: [euro(1), euro(1), { minorUnits: 5, currency: 'JPY' }],
      spreadMethod: 'EQUAL_SHARES',
      lines: byShare(null, null),
    });
    // One cent at a time, both would have gone to the first line.
    expect(shares.map(({ extras }) => extras[0]?.minorUnits)).toEqual([1, 1]);
    expect(shares.map(({ totals }) => totals.map(({ minorUnits }) => minorUnits))).toEqual([
      [6, 3],
      [6, 2],
    ]);
  });

  it('takes shares of any number of decimals without rounding', () => {
    const shares = lotShares({
      price: euro(300),
      extraCosts: [],
      spreadMethod: 'STATED_SHARES',
      lines: byShare('0.000000000000000001', '0.000000000000000002'),
    });
    expect(shares.map(({ price }) => price.minorUnits)).toEqual([100, 200]);
  });

  it('parts sum to the whole in every currency', () => {
    fc.assert(
      fc.property(
        fc.nat(1e9),
        fc.array(fc.nat(1e6), { maxLength: 5 }),
        fc.array(fc.integer({ min: 1, max: 1e9 }), { minLength: 1, maxLength: 20 }),
        (price, extras, values) => {
          const shares = lotShares({
            price: euro(price),
            extraCosts: extras.map(euro),
            spreadMethod: 'STATED_VALUES',
            lines: byValue(...values),
          });
          const total = shares.reduce((sum, { totals }) => sum + (totals[0]?.minorUnits ?? 0), 0);
          expect(total).toBe(price + extras.reduce((sum, extra) => sum + extra, 0));
        },
      ),
    );
  });
});

describe('what keeps a lot from being spread', () => {
  it('asks for each share or value that is missing', () => {
    const missing = lotProblems({ spreadMethod: 'STATED_VALUES', lines: byValue(1, null, null) });
    expect(missing.map(({ line, field }) => [line, field])).toEqual([
      [1, 'statedValue'],
      [2, 'statedValue'],
    ]);
  });

  it('speaks of values where values were stated', () => {
    const [zero] = lotProblems({ spreadMethod: 'STATED_VALUES', lines: byValue(5, 0) });
    expect(zero).toEqual({
      line: 1,
      field: 'statedValue',
      message: 'Value 2: a value of zero gets nothing; leave it out or give it a value above zero.',
    });
    const [none] = lotProblems({ spreadMethod: 'STATED_VALUES', lines: byValue(0, 0) });
    expect(none?.message).toBe('All values are zero: give at least one a value above zero.');
  });

  it('wants nothing stated for equal shares', () => {
    expect(lotProblems({ spreadMethod: 'EQUAL_SHARES', lines: byShare(null) })).toEqual([]);
    expect(lotProblems({ spreadMethod: 'EQUAL_SHARES', lines: [] })).toHaveLength(1);
  });
});

describe('events before a thing was made', () => {
  const sale = { eventId: 'sale', earliest: null, latest: '1956-12-31' };

  it('cannot be, and are told with the making', () => {
    const made = { eventId: 'made', earliest: '1957-01-01', latest: '1957-12-31' };
    expect(beforeMaking([sale, made], [made]).map(({ eventIds }) => eventIds)).toEqual([
      ['sale', 'made'],
    ]);
  });

  it('may be while a day is common to both', () => {
    expect(beforeMaking([sale], [{ eventId: null, earliest: '1956-12-31' }])).toEqual([]);
    expect(beforeMaking([sale], [{ eventId: null, earliest: null }])).toEqual([]);
  });
});
