import { describe, expect, it } from 'vitest';
import { envelopePower } from '../../src/domain/calculators/envelopePower.js';
import { exposureDistance } from '../../src/domain/calculators/exposureDistance.js';
import { exposureLimit } from '../../src/domain/calculators/exposureLimit.js';
import { mismatch } from '../../src/domain/calculators/mismatch.js';
import { powerLevel } from '../../src/domain/calculators/powerLevel.js';

const feet = 0.3048;

describe('levels at 50 Ω', () => {
  const from = (given: { dbm?: number; watts?: number; voltsRms?: number }) =>
    powerLevel({ dbm: null, watts: null, voltsRms: null, ohms: 50, ...given });

  it('0.5 µV is −113 dBm and 1 µV −107 dBm (published tables of receiver sensitivity)', () => {
    expect(from({ voltsRms: 0.5e-6 }).dbm).toBeCloseTo(-113.01, 2);
    expect(from({ voltsRms: 1e-6 }).dbm).toBeCloseTo(-106.99, 2);
  });

  it.each([
    [0, 0.001, 0.2236],
    [30, 1, 7.071],
    [50, 100, 70.711],
  ])('%i dBm is %f W and %f V', (dbm, watts, volts) => {
    expect(from({ dbm }).watts).toBeCloseTo(watts, 9);
    expect(from({ dbm }).voltsRms).toBeCloseTo(volts, 3);
    expect(from({ watts }).dbm).toBeCloseTo(dbm, 9);
  });

  it('wants one of the three', () => {
    expect(() => from({})).toThrow(/these are 0/);
    expect(() => from({ dbm: 1, watts: 1 })).toThrow(/these are 2/);
    expect(() => from({ watts: -1 })).toThrow(/more than 0/);
  });
});

describe('peak envelope power from a scope', () => {
  it.each([
    [200, 100],
    [400, 400],
    [500, 625],
  ])(
    '%i V peak to peak across 50 Ω are %i W (public examination A-003-002-006, -009, -007; GROL 3-55G5)',
    (volts, watts) => {
      expect(envelopePower({ peakToPeakVolts: volts, ohms: 50 }).watts).toBe(watts);
    },
  );
});

describe('mismatch', () => {
  const from = (given: Partial<Parameters<typeof mismatch>[0]>) =>
    mismatch({
      swr: null,
      forwardWatts: null,
      reflectedWatts: null,
      returnLossDecibels: null,
      ...given,
    });

  it.each([
    [1.5, 13.979, 4, 0.1773],
    [2, 9.542, 11.11, 0.5115],
    [3, 6.021, 25, 1.2494],
    [5, 3.522, 44.44, 2.5527],
  ])(
    'ratio %f: return loss %f dB, %f %% back, %f dB lost (formulas computed apart)',
    (swr, loss, percent, lost) => {
      const found = from({ swr });
      expect(found.returnLossDecibels).toBeCloseTo(loss, 3);
      expect(found.reflectedPercent).toBeCloseTo(percent, 1);
      expect(found.mismatchLossDecibels).toBeCloseTo(lost, 3);
      expect(from({ returnLossDecibels: found.returnLossDecibels }).swr).toBeCloseTo(swr, 9);
    },
  );

  it('100 W forward and 4 W back are 1.5; nothing back is 1 and has no return loss', () => {
    expect(from({ forwardWatts: 100, reflectedWatts: 4 }).swr).toBeCloseTo(1.5, 9);
    expect(from({ forwardWatts: 100, reflectedWatts: 0 })).toMatchObject({
      swr: 1,
      returnLossDecibels: null,
    });
    expect(() => from({ forwardWatts: 100, reflectedWatts: 100 })).toThrow(
      /less than forwardWatts/,
    );
    expect(() => from({ forwardWatts: 100 })).toThrow(/forwardWatts with reflectedWatts/);
    expect(() => from({ swr: 0.5 })).toThrow(/at least 1/);
  });
});

describe('exposure, OET Bulletin 65', () => {
  const station = {
    modeDuty: 1,
    onShare: 1,
    gainDbi: 0,
    megahertz: 144,
    ground: 'EPA' as const,
    metres: null,
  };
  const distance = (watts: number, situation: string, given = {}) =>
    exposureDistance({ ...station, envelopeWatts: watts, ...given }).distances.find(
      (one) => one.situation === situation,
    )?.metres ?? NaN;

  it.each([
    [500, 166, 371],
    [1500, 287, 642],
  ])(
    '%i W into a moonbounce array of 24 dBi on 144 MHz: %i ft controlled, %i ft uncontrolled (Supplement B, table on eight 17-element Yagis, with the EPA factor)',
    (watts, controlled, uncontrolled) => {
      const array = { gainDbi: 24 };
      expect(Math.abs(distance(watts, 'CONTROLLED', array) / feet - controlled)).toBeLessThan(1);
      expect(Math.abs(distance(watts, 'UNCONTROLLED', array) / feet - uncontrolled)).toBeLessThan(
        1,
      );
    },
  );

  it('39.811 mW, 0 dBi, 20 cm: 0.00792 mW/cm² (equation of page 18, as worked in a published test report)', () => {
    const found = exposureDistance({
      ...station,
      envelopeWatts: 0.039811,
      megahertz: 2400,
      ground: 'NONE',
      metres: 0.2,
    });
    expect(found.density).toBeCloseTo(0.00792, 5);
  });

  it('1500 W, 2.2 dBi, 100 ft, 3.75 MHz with ground: 0.0546 mW/cm² (a station evaluation published on qsl.net)', () => {
    const given = {
      ...station,
      envelopeWatts: 1500,
      gainDbi: 2.2,
      megahertz: 3.75,
      metres: 100 * feet,
    };
    expect(exposureDistance(given).density).toBeCloseTo(0.0546, 4);
    expect(exposureDistance({ ...given, ground: 'NONE' }).density).toBeCloseTo(0.0213, 4);
    expect(exposureDistance({ ...given, ground: 'PERFECT' }).density).toBeCloseTo(0.0853, 4);
    // The page rounds up: 2.97 and 6.58 ft.
    expect(distance(1500, 'CONTROLLED', given) / feet).toBeCloseTo(2.92, 2);
    expect(distance(1500, 'UNCONTROLLED', given) / feet).toBeCloseTo(6.53, 2);
  });

  it('limits of 47 CFR 1.1310', () => {
    expect(exposureLimit(3.75, 'CONTROLLED')).toBe(64);
    expect(exposureLimit(3.75, 'UNCONTROLLED')).toBeCloseTo(12.8, 1);
    expect(exposureLimit(7.2, 'UNCONTROLLED')).toBeCloseTo(3.4722, 4);
    expect(exposureLimit(28.5, 'UNCONTROLLED')).toBeCloseTo(0.2216, 4);
    expect(exposureLimit(144, 'CONTROLLED')).toBe(1);
    expect(exposureLimit(2400, 'UNCONTROLLED')).toBe(1);
  });

  it('a fifth of the power on average needs √5 less distance, and near fields are named', () => {
    const dipole = { gainDbi: 2.15, megahertz: 14.2 };
    expect(distance(100, 'UNCONTROLLED', dipole)).toBeCloseTo(1.9349, 3);
    expect(distance(100, 'UNCONTROLLED', { ...dipole, modeDuty: 0.2 })).toBeCloseTo(0.8653, 3);
    const found = exposureDistance({ ...station, ...dipole, envelopeWatts: 100 });
    expect(found.nearFieldMetres).toBeCloseTo(3.36, 2);
    expect(found.working.cautions[0]).toContain('near field');
  });

  it('refuses a duty above one and a frequency that the table does not have', () => {
    expect(() => distance(100, 'CONTROLLED', { modeDuty: 1.5 })).toThrow(/modeDuty.*at most 1/);
    expect(() => distance(100, 'CONTROLLED', { megahertz: 0.1 })).toThrow(
      /megahertz.*at least 0.3/,
    );
  });
});
