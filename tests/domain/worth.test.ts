import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { ceilingAfter } from '../../src/domain/worth/ceilingAfter.js';
import { chanceOfBreach } from '../../src/domain/worth/chanceOfBreach.js';
import { indexedAmount, indexPointAt } from '../../src/domain/worth/indexedAmount.js';
import { logSpread } from '../../src/domain/worth/logSpread.js';
import { notedPriceAmount } from '../../src/domain/worth/notedPriceAmount.js';
import { bestOf, outcomesOf, type Prospects } from '../../src/domain/worth/outcomes.js';
import { simulateCosts } from '../../src/domain/worth/simulateCosts.js';
import { feasibleStandards, isNeededFor } from '../../src/domain/worth/standards.js';
import { certainAmount } from '../../src/domain/worth/uncertainAmount.js';
import { valueAtStandard } from '../../src/domain/worth/valueAtStandard.js';
import { worthKnowingSuccess, worthKnowingValue } from '../../src/domain/worth/worthKnowing.js';

const noted = (amountMinorUnits: number, notedOn: string, quantity = 1) => ({
  amountMinorUnits,
  currency: 'EUR',
  quantity,
  notedOn,
});

describe('what a part will cost by its notes', () => {
  const today = '2026-06-01';

  it('is about the median of one, wider with fewer notes and with older ones', () => {
    const many = ['01', '02', '03', '04', '05'].map((month) => noted(20_00, `2026-${month}-20`, 2));
    const [all, one, old] = [many, many.slice(-1), [noted(10_00, '2015-05-20')]].map((notes) =>
      notedPriceAmount(notes, today),
    );
    for (const price of [all, one, old]) expect(price?.amount.at(0.5)).toBeCloseTo(10_00, 6);
    const spread = [all, one, old].map((price) => price!.amount.at(0.9) - price!.amount.at(0.1));
    expect(spread[0]!).toBeLessThan(spread[1]!);
    expect(spread[1]!).toBeLessThan(spread[2]!);
    expect(old?.isOld).toBe(true);
    expect(notedPriceAmount([], today)).toBeNull();
  });

  it('never grows more certain by losing a note that agrees, or by age', () => {
    const counts = fc.integer({ min: 2, max: 30 });
    const days = fc.integer({ min: 0, max: 20_000 });
    fc.assert(
      fc.property(counts, days, days, (count, age, more) => {
        const logs = Array.from({ length: count }, () => 3);
        expect(logSpread(logs, age)).toBeLessThanOrEqual(logSpread(logs.slice(1), age));
        expect(logSpread(logs, age)).toBeLessThanOrEqual(logSpread(logs, age + more));
      }),
    );
  });
});

describe('ceilings', () => {
  const trials = fc
    .array(fc.integer({ min: 0, max: 10_000 }), { minLength: 1, maxLength: 50 })
    .map((costs) => Float64Array.from(costs));
  const amounts = fc.integer({ min: 0, max: 20_000 });

  it('are never more likely to be passed for being raised', () => {
    fc.assert(
      fc.property(trials, amounts, amounts, amounts, (costs, spent, ceiling, raise) => {
        const chance = chanceOfBreach(costs, spent, ceiling);
        expect(chanceOfBreach(costs, spent, ceiling + raise)).toBeLessThanOrEqual(chance);
        expect(chance).toBeGreaterThanOrEqual(0);
        expect(chance).toBeLessThanOrEqual(1);
      }),
    );
  });

  it('hold when reached exactly, and for money that comes back', () => {
    expect(chanceOfBreach(Float64Array.of(50), 50, 100)).toBe(0);
    expect(ceilingAfter({ ceiling: 100, spent: 60, added: 40 })).toEqual({
      left: 0,
      isBroken: false,
    });
    expect(ceilingAfter({ ceiling: 100, spent: 60, added: 41 })).toEqual({
      left: -1,
      isBroken: true,
    });
    expect(ceilingAfter({ ceiling: 100, spent: 160, added: -5 }).isBroken).toBe(false);
  });
});

describe('trials of costs', () => {
  it('do not depend on the order of lines, nor does one line change another', () => {
    const line = (id: string) => ({
      id,
      amount: { ...certainAmount(0), variance: 1, at: (p: number) => p },
    });
    const choices = { seed: 's', trials: 50 };
    const [ab, ba] = [
      ['a', 'b'],
      ['b', 'a'],
    ].map((ids) => simulateCosts(ids.map(line), null, choices));
    expect(ab!.money).toEqual(ba!.money);
    expect(simulateCosts([line('a')], null, choices).rows.get('a')).toEqual(ab!.rows.get('a'));
    expect(() => simulateCosts([line('a'), line('a')], null, choices)).toThrow(/twice/);
  });
});

describe('the value at a standard', () => {
  const value = (standard: 'NOT_WORKING' | 'WORKING' | 'AS_MADE' | 'FOR_SHOW', likely: number) => ({
    standard,
    low: null,
    likely,
    high: null,
    ageDays: 30,
  });
  const notes = [value('NOT_WORKING', 100), value('AS_MADE', 800), value('FOR_SHOW', 300)];

  it('is as noted, else evenly by ratio between the rungs about it', () => {
    expect(valueAtStandard(notes, 'AS_MADE')).toMatchObject({ how: 'NOTED', likely: 800 });
    const between = valueAtStandard(notes, 'WORKING');
    expect(between).toMatchObject({ how: 'INTERPOLATED', noteCount: 2 });
    expect(between?.likely).toBeCloseTo(200, 9);
    expect(valueAtStandard(notes, 'WORKING_AND_CLEAN')?.likely).toBeCloseTo(400, 9);
    expect(between!.high / between!.low).toBeGreaterThan(800 / 360);
  });

  it('is not guessed beyond the last rung, nor beside the ladder', () => {
    expect(valueAtStandard([value('WORKING', 5)], 'AS_MADE')).toBeNull();
    expect(valueAtStandard([value('NOT_WORKING', 5), value('AS_MADE', 9)], 'FOR_SHOW')).toBeNull();
  });

  it('takes a narrower range where the source gave one', () => {
    const narrow = { ...value('WORKING', 200), low: 190, high: 210 };
    const [told, untold] = [
      valueAtStandard([narrow], 'WORKING'),
      valueAtStandard([value('WORKING', 200)], 'WORKING'),
    ];
    expect(told!.high - told!.low).toBeLessThan(untold!.high - untold!.low);
  });
});

describe('standards', () => {
  it('below a target that work can be stopped at', () => {
    expect(feasibleStandards('AS_MADE')).toEqual(['WORKING', 'WORKING_AND_CLEAN', 'AS_MADE']);
    expect(feasibleStandards('FOR_SHOW')).toEqual(['FOR_SHOW']);
    expect(isNeededFor('WORKING', 'AS_MADE')).toBe(false);
    expect(isNeededFor('AS_MADE', 'WORKING')).toBe(true);
    expect(isNeededFor('FOR_SHOW', null)).toBe(true);
  });
});

describe('a price index', () => {
  const points = [
    { period: '2019', value: '100' },
    { period: '2020-05', value: '104' },
    { period: '2020', value: '103' },
  ];

  it('gives the month, else the year, else what came last before', () => {
    expect(indexPointAt(points, '2020-05-20')?.value).toBe('104');
    expect(indexPointAt(points, '2020-06-20')?.value).toBe('103');
    expect(indexPointAt(points, '2025-01-01')?.value).toBe('104');
    expect(indexPointAt(points, '2018-12-31')).toBeNull();
    expect(indexedAmount(1, '2018-01-01', '2020-01-01', points)).toBeNull();
  });
});

describe('going on or stopping', () => {
  const prospects = fc.record({
    value: fc.integer({ min: 0, max: 5000 }),
    cost: fc.integer({ min: 0, max: 5000 }),
    stands: fc.integer({ min: 0, max: 5000 }),
    chance: fc.integer({ min: 0, max: 100 }),
    premium: fc.integer({ min: 0, max: 1000 }),
  });
  const told = (p: {
    value: number;
    cost: number;
    stands: number;
    chance: number;
    premium: number;
  }): Prospects => ({
    finishes: [{ standard: 'WORKING', value: certainAmount(p.value), expectedCost: p.cost }],
    asItStands: certainAmount(p.stands),
    partsNet: 10,
    spares: 5,
    saleCostShare: 0.1,
    successChance: p.chance / 100,
    premium: p.premium,
  });

  it('knows that information is never worth less than nothing', () => {
    fc.assert(
      fc.property(prospects, (p) => {
        expect(worthKnowingSuccess(told(p))).toBeGreaterThanOrEqual(0);
        expect(worthKnowingValue(told(p))).toBeGreaterThanOrEqual(0);
      }),
    );
  });

  it('never favours finishing the more for its costing more', () => {
    fc.assert(
      fc.property(prospects, fc.integer({ min: 1, max: 500 }), (p, more) => {
        const gain = (cost: number) => outcomesOf(told({ ...p, cost }))[0]!.gain;
        expect(gain(p.cost + more)).toBeCloseTo(gain(p.cost) - more, 6);
      }),
    );
  });

  it('names what is best, and the premium as the owner’s own', () => {
    const plain = { value: 900, cost: 700, stands: 250, chance: 100, premium: 0 };
    expect(bestOf(outcomesOf(told(plain)))?.kind).toBe('LEAVE');
    const [finish] = outcomesOf(told({ ...plain, premium: 100 }));
    expect(finish).toMatchObject({ worth: 900, premium: 100, gain: 300 });
    // One chance in two: knowing it saves the cost of a failure.
    const doubtful = told({ value: 900, cost: 100, stands: 250, chance: 50, premium: 0 });
    expect(worthKnowingSuccess(doubtful)).toBeCloseTo(0.5 * 800 + 0.5 * 250 - 475, 9);
  });
});
