import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { compareCapacitors } from '../../src/domain/parts/compareCapacitors.js';
import { compareTubes } from '../../src/domain/parts/compareTubes.js';
import { rankSubstitutes } from '../../src/domain/parts/rankSubstitutes.js';
import { priceSummaries } from '../../src/domain/parts/priceSummaries.js';
import { substitutionCircle } from '../../src/domain/parts/substitutionCircle.js';
import type { TubeRatings } from '../../src/domain/parts/tubeRatings.js';

const sure = <Value>(value: Value) => ({ value, isConfirmed: true });
const pentode: TubeRatings = {
  designation: '6AU6A',
  hasTappedHeater: false,
  tubeClass: sure('SHARP_PENTODE'),
  base: sure('7BK'),
  heaterVolts: sure(6.3),
  heaterAmperes: sure(0.3),
  transconductanceMicrosiemens: sure(5200),
  plateDissipationWatts: sure(3.5),
  plateVolts: sure(330),
};
const like = (changes: Partial<TubeRatings>): TubeRatings => ({
  ...pentode,
  designation: 'other',
  ...changes,
});

describe('a tube that may stand in for another', () => {
  it('serves as it is when base, heater, slope and dissipation agree', () => {
    expect(compareTubes(pentode, like({}), 'SERIES')).toMatchObject({
      grade: 'DIRECT',
      whyNot: [],
      worse: [],
    });
  });

  it('serves with parallel heaters only when its heater current differs', () => {
    const hungry = like({ heaterAmperes: sure(0.45) });
    const { grade, worse, recheck } = compareTubes(pentode, hungry, 'PARALLEL');
    expect(grade).toBe('PARALLEL_HEATERS_ONLY');
    expect(worse).toEqual(['heater current 0.45 A against 0.3 A']);
    expect(recheck).toEqual(['load on the heater winding']);
    const inString = compareTubes(pentode, hungry, 'SERIES');
    expect(inString.grade).toBeNull();
    expect(inString.whyNot).toEqual(['Its heater takes 0.45 A; the series string carries 0.3 A.']);
  });

  it('needs changes where the cutoff differs: a remote pentode for a sharp one', () => {
    const remote = like({ tubeClass: sure('REMOTE_PENTODE') });
    expect(compareTubes(pentode, remote, 'PARALLEL')).toMatchObject({
      grade: 'WITH_CHANGES',
      recheck: ['gain control and distortion'],
    });
  });

  it('does not serve on another base, and says both', () => {
    const { grade, whyNot } = compareTubes(pentode, like({ base: sure('7CM') }), 'PARALLEL');
    expect(grade).toBeNull();
    expect(whyNot).toEqual(['Its base is 7CM; the socket is wired for 7BK.']);
  });

  it('does not serve with less dissipation, or with a heater for other volts', () => {
    const weak = like({
      plateDissipationWatts: sure(2),
      heaterVolts: sure(12.6),
      heaterAmperes: sure(0.15),
    });
    expect(compareTubes(pentode, weak, 'PARALLEL').whyNot).toEqual([
      'Its heater takes 12.6 V; there are 6.3 V.',
      "Its plate may dissipate only 57 % of the original's.",
    ]);
  });

  it('asks for alignment and neutralization where capacitances lie outside a quarter', () => {
    const original = like({ inputPicofarads: sure(5.5), gridPlatePicofarads: sure(0.02) });
    const other = like({ inputPicofarads: sure(10), gridPlatePicofarads: sure(0.03) });
    expect(compareTubes(original, other, 'PARALLEL').recheck).toEqual([
      'alignment of the tuned circuits',
      'neutralization and stability',
    ]);
  });

  it('names what its grade rests on that nobody confirmed', () => {
    const unsure = like({ transconductanceMicrosiemens: { value: 5000, isConfirmed: false } });
    expect(compareTubes(pentode, unsure, 'PARALLEL').unproven).toEqual([
      'transconductance of other',
    ]);
  });
});

describe('a capacitor that may stand in for another', () => {
  const paper = { farads: 0.1e-6, workingVolts: 400 };
  it('bears at least the voltage of the original', () => {
    expect(compareCapacitors(paper, { farads: 0.1e-6, workingVolts: 630 }).grade).toBe('DIRECT');
    expect(compareCapacitors(paper, { farads: 0.1e-6, workingVolts: 250 }).whyNot).toEqual([
      'It bears 250 V; the original bears 400 V.',
    ]);
    expect(compareCapacitors(paper, { farads: 0.068e-6, workingVolts: 630 }).grade).toBe(
      'WITH_CHANGES',
    );
  });
});

describe('circles of substitutions', () => {
  const edge = (originalId: string, substituteId: string, isMutual = false) => ({
    originalId,
    substituteId,
    isMutual,
  });
  it('finds the way round, and lets types serve each other both ways', () => {
    expect(substitutionCircle([edge('a', 'b'), edge('b', 'c'), edge('c', 'a')])).toHaveLength(3);
    expect(substitutionCircle([edge('a', 'b', true), edge('b', 'c')])).toBeNull();
    expect(
      substitutionCircle([edge('a', 'b', true), edge('b', 'c'), edge('c', 'a')]),
    ).not.toBeNull();
    expect(
      substitutionCircle([edge('a', 'b', true), edge('b', 'c', true), edge('c', 'a')]),
    ).toEqual(['c', 'a']);
  });

  it('never finds one among steps that all go from a lower to a higher number', () => {
    const step = fc.tuple(fc.nat(30), fc.integer({ min: 1, max: 9 }));
    fc.assert(
      fc.property(fc.array(step, { maxLength: 60 }), (steps) => {
        const edges = steps.map(([from, by]) => edge(String(from), String(from + by)));
        expect(substitutionCircle(edges)).toBeNull();
      }),
    );
  });
});

describe('the order of substitutes', () => {
  const one = (
    designation: string,
    inStock: number,
    grade: 'DIRECT' | 'WITH_CHANGES' | null,
    price: number | null,
  ) => ({
    designation,
    inStock,
    grade,
    lastPriceMinorUnits: price,
    lastPriceCurrency: price === null ? null : 'EUR',
  });
  it('is stock, then grade, then price last noted', () => {
    const order = rankSubstitutes([
      one('dear', 0, 'DIRECT', 900),
      one('unpriced', 0, 'DIRECT', null),
      one('cheap', 0, 'DIRECT', 400),
      one('unproven', 0, null, 1),
      one('on the shelf', 2, 'WITH_CHANGES', null),
    ]).map(({ designation }) => designation);
    expect(order).toEqual(['on the shelf', 'cheap', 'dear', 'unpriced', 'unproven']);
  });
});

describe('what one costs', () => {
  const note = (amountMinorUnits: number, notedOn: string, currency = 'EUR', quantity = 1) => ({
    amountMinorUnits,
    notedOn,
    currency,
    quantity,
  });
  it('is the median of recent notes, by currency, each amount divided by its number', () => {
    const [eur, usd] = priceSummaries(
      [
        note(1000, '2025-01-01'),
        note(3000, '2025-06-01', 'EUR', 2),
        note(2500, '2026-01-01'),
        note(1, '2001-01-01'),
        note(900, '2019-01-01', 'USD'),
      ],
      '2026-06-01',
    );
    expect(eur).toMatchObject({
      currency: 'EUR',
      medianMinorUnits: 1500,
      recentCount: 3,
      totalCount: 4,
      newestAgeDays: 151,
    });
    expect(usd).toMatchObject({
      currency: 'USD',
      medianMinorUnits: null,
      recentCount: 0,
      totalCount: 1,
    });
  });

  it('lies between the lowest and the highest recent price', () => {
    const amounts = fc.array(fc.nat(1_000_000), { minLength: 1, maxLength: 40 });
    fc.assert(
      fc.property(amounts, (all) => {
        const [only] = priceSummaries(
          all.map((amount) => note(amount, '2026-05-01')),
          '2026-06-01',
        );
        expect(only?.medianMinorUnits).toBeGreaterThanOrEqual(Math.min(...all));
        expect(only?.medianMinorUnits).toBeLessThanOrEqual(Math.max(...all));
      }),
    );
  });
});
