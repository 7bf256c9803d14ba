import { describe, expect, it } from 'vitest';
import { bleederResistor } from '../../src/domain/calculators/bleederResistor.js';
import { buckingTransformer } from '../../src/domain/calculators/buckingTransformer.js';
import { BadInputs } from '../../src/domain/calculators/checkedInputs.js';
import { dischargeTime } from '../../src/domain/calculators/dischargeTime.js';
import { fuseRating } from '../../src/domain/calculators/fuseRating.js';
import { heaterVoltage } from '../../src/domain/calculators/heaterVoltage.js';
import { leakage } from '../../src/domain/calculators/leakageLimits.js';
import { reforming } from '../../src/domain/calculators/reforming.js';
import { reformingRules } from '../../src/domain/calculators/reformingRules.js';
import { seriesDropper } from '../../src/domain/calculators/seriesDropper.js';
import { preferredSeries } from '../../src/features/reference/valueTables.js';

const bank = { microfarads: 40, startVolts: 400, targetVolts: 50, bleederOhms: 100_000 };
const E24 = preferredSeries.get('E24')?.values ?? [];

describe('discharge of a capacitor bank', () => {
  it('takes 125 s to 0.35 % through 260 kΩ from 85 µF (textbook problem on a bleeder, figure 20.47, jiskha.com 1362970384)', () => {
    const found = dischargeTime({
      microfarads: 85,
      startVolts: 1000,
      targetVolts: 3.5,
      bleederOhms: 260_000,
    });
    expect(found.timeConstantSeconds).toBeCloseTo(22.1, 6);
    expect(found.seconds).toBeCloseTo(125, 0);
  });

  it('takes 120 s to 0.25 % through 250 kΩ from 80 µF (college physics, figure 21.58, numerade.com)', () => {
    const asked = { microfarads: 80, startVolts: 400, targetVolts: 1, bleederOhms: 250_000 };
    expect(dischargeTime(asked).seconds).toBeCloseTo(120, 0);
  });

  it('agrees with exact values of the formula computed apart (40 µF, 400 V, 100 kΩ)', () => {
    expect(dischargeTime(bank).seconds).toBeCloseTo(8.3178, 4);
    expect(dischargeTime({ ...bank, targetVolts: 60 }).seconds).toBeCloseTo(7.5885, 4);
    expect(dischargeTime({ ...bank, targetVolts: 30 }).seconds).toBeCloseTo(10.3611, 4);
    expect(dischargeTime(bank).joulesAtStart).toBeCloseTo(3.2, 9);
  });

  const lines = (microfarads: number, startVolts: number) =>
    new Map(
      dischargeTime({ ...bank, microfarads, startVolts }).thresholds.map((one) => [
        one.rule.split(',')[0],
        one,
      ]),
    );

  it('10 J is 125 µF at 400 V (US national laboratory, tables 2.2.13 and 2.3.5): a little less keeps it', () => {
    const rule = 'US national laboratory';
    expect(lines(125.001, 400).get(rule)?.isOverAtStart).toBe(true);
    expect(lines(124.999, 400).get(rule)?.isOverAtStart).toBe(false);
    expect(lines(31.251, 800).get(rule)?.isOverAtStart).toBe(true);
    expect(lines(31.249, 800).get(rule)?.isOverAtStart).toBe(false);
  });

  it('names each rule that 3.2 J at 400 V breaks or keeps: the rules differ', () => {
    const over = [...lines(40, 400)].filter(([, one]) => one.isOverAtStart).map(([rule]) => rule);
    expect(over).toEqual([
      'NFPA 70E (2021)',
      'US National Electrical Code',
      'IEC 62368-1 (2018)',
      'IEC 60950 and 60335-1',
    ]);
    expect(lines(40, 400).get('NFPA 70E (2021)')?.volts).toBeCloseTo(Math.sqrt(50_000), 6);
  });

  it('50 V within a minute up to 600 V (NEC 460.6, as quoted by ecmweb.com), five minutes above', () => {
    const slow = { ...bank, bleederOhms: 1_000_000 };
    const code = (startVolts: number) =>
      dischargeTime({ ...slow, startVolts }).thresholds.find(
        ({ allowedSeconds }) => allowedSeconds,
      );
    expect(code(400)).toMatchObject({ allowedSeconds: 60, isKept: false });
    expect(code(700)).toMatchObject({ allowedSeconds: 300, isKept: true });
  });

  it('45 µC at 450 V is 0.1 µF (IEC 60950, limited current)', () => {
    const rule = 'IEC 60950 and 60335-1';
    expect(lines(0.1, 451).get(rule)?.isOverAtStart).toBe(true);
    expect(lines(0.1, 449).get(rule)?.isOverAtStart).toBe(false);
    expect(lines(0.0999, 450.2).get(rule)?.isOverAtStart).toBe(false);
  });

  it('refuses what cannot be, with every reason', () => {
    const bad = () =>
      dischargeTime({ microfarads: -1, startVolts: 0, targetVolts: 5, bleederOhms: 1e15 });
    expect(bad).toThrow(BadInputs);
    expect(bad).toThrow(/microfarads.*startVolts.*bleederOhms.*less than startVolts/s);
  });
});

describe('bleeder', () => {
  it('from 10 V to 1 V in 2 s with 3 µF takes 289,530 Ω (worked answer, wyzant.com 394839)', () => {
    const asked = { microfarads: 3, workingVolts: 10, targetVolts: 1, withinSeconds: 2 };
    expect(bleederResistor(asked, E24).mostOhms).toBeCloseTo(289_530, 0);
  });

  it('800 V to 50 V in 60 s with 50 µF takes at most 432.8 kΩ and 1.479 W; 430 kΩ is made', () => {
    const asked = { microfarads: 50, workingVolts: 800, targetVolts: 50, withinSeconds: 60 };
    const found = bleederResistor(asked, E24);
    expect(found.mostOhms / 1000).toBeCloseTo(432.8, 1);
    expect(found.wattsAtMostOhms).toBeCloseTo(1.479, 3);
    expect(found.madeOhms).toBe(430_000);
    expect(found.madeSeconds).toBeLessThanOrEqual(60);
  });
});

describe('re-forming, after each published rule', () => {
  const plan = (ratedVolts: number, rule: (typeof reformingRules)[number]['name']) =>
    reforming({ ratedVolts, supplyVolts: null, monthsStored: 480, rule }).applied;

  it("makers' practice: 5 minutes and one a month are 485 minutes after 40 years; its 5 W are too little above 387 V", () => {
    const found = plan(450, 'BENCH_MAKER');
    expect(found.minutesAtFullVoltage).toBe(485);
    expect(found.worstMilliamperes).toBeCloseTo(15, 9);
    expect(found.worstWatts).toBeCloseTo(6.75, 9);
    expect(found.remarks[0]).toContain('387 V');
    expect(plan(380, 'BENCH_MAKER').remarks).toEqual([]);
  });

  it('note of 1993: 10 kΩ up to 75 V, 100 kΩ above, at most 1 mA, 4 hours at full voltage', () => {
    expect(plan(75, 'MAKER_NOTE_1993').seriesOhms).toBe(10_000);
    const found = plan(450, 'MAKER_NOTE_1993');
    expect(found).toMatchObject({ seriesOhms: 100_000, minutesAtFullVoltage: 240 });
    expect(found.worstMilliamperes).toBe(1);
    for (const [index, { volts }] of found.steps.entries()) {
      const rise = volts - (found.steps[index - 1]?.volts ?? 0);
      expect((rise / found.seriesOhms) * 1000).toBeLessThanOrEqual(1);
    }
  });

  it('EIA-815 (1999): 100 Ω up to 100 V, 1000 Ω above, for an hour', () => {
    expect(plan(100, 'EIA_815')).toMatchObject({ seriesOhms: 100, minutesAtFullVoltage: 60 });
    expect(plan(101, 'EIA_815')).toMatchObject({ seriesOhms: 1000, minutesAtFullVoltage: 60 });
  });

  it('half an hour through 1 kΩ', () => {
    const half = plan(350, 'ONE_KILOHM_HALF_HOUR');
    expect(half).toMatchObject({ seriesOhms: 1000, minutesAtFullVoltage: 30 });
  });

  it('no plan goes above the rated voltage, and the gentlest is applied when none is named', () => {
    const found = reforming({ ratedVolts: 450, supplyVolts: null, monthsStored: null, rule: null });
    expect(found.applied.rule.name).toBe('MAKER_NOTE_1993');
    for (const { steps } of [found.applied, ...found.others]) {
      expect(Math.max(...steps.map(({ volts }) => volts))).toBe(450);
    }
    expect(found.others).toHaveLength(reformingRules.length - 1);
    const tooMuch = { ratedVolts: 450, supplyVolts: 500, monthsStored: 1, rule: null };
    expect(() => reforming(tooMuch)).toThrow(/never go above the rated voltage, 450/);
  });

  it('shelf: 1 year as it is, 3 years test, then re-form, past 10 years the end (note of 1993)', () => {
    const says = (monthsStored: number) =>
      reforming({ ratedVolts: 50, supplyVolts: null, monthsStored, rule: null }).byStorage;
    expect(says(12)).toContain('as it is');
    expect(says(36)).toContain('test its leakage');
    expect(says(119)).toContain('re-form it');
    expect(says(121)).toContain('10 years');
  });
});

describe('heater on the mains of today', () => {
  const heater = (mainsVolts: number, designMainsVolts: number) =>
    heaterVoltage({ heaterVolts: 6.3, designMainsVolts, mainsVolts, filament: 'RECEIVING' });

  it('a 220 V set on 240 V: 6.85 V were measured at a 6.3 V heater (dms-audio.com, bucking transformer)', () => {
    expect(Math.abs(heater(240, 220).volts - 6.85)).toBeLessThan(0.05);
  });

  it.each([
    [120, 110, 6.873, 9.09, true],
    [125, 110, 7.159, 13.64, false],
    [120, 117, 6.462, 2.56, true],
    [115, 117, 6.192, -1.71, true],
  ])('%i V on a %i V set gives %f V, %f %%', (mains, design, volts, percent, isWithin) => {
    const found = heater(mains, design);
    expect(found.volts).toBeCloseTo(volts, 3);
    expect(found.deviationPercent).toBeCloseTo(percent, 2);
    expect(found.isWithinTolerance).toBe(isWithin);
  });

  it('±10 % of 6.3 V is 5.67 to 6.93 V; the very ends still count as within', () => {
    expect(heater(110, 110).lowestVolts).toBeCloseTo(5.67, 9);
    expect(heater(110, 110).highestVolts).toBeCloseTo(6.93, 9);
    expect(heater(121, 110).isWithinTolerance).toBe(true);
  });
});

describe('bringing the mains down', () => {
  it('20 V at 0.5 A take 40 Ω and 10 W (dms-audio.com, bucking transformer)', () => {
    const found = seriesDropper({ mainsVolts: 240, wantedVolts: 220, loadAmperes: 0.5 });
    expect([found.ohms, found.watts]).toEqual([40, 10]);
  });

  it('122 V less a 5 V winding are 117 V (ielogical.com, bucking transformer)', () => {
    const asked = { mainsVolts: 122, windingVolts: 5, primaryVolts: 122, loadAmperes: 2 };
    expect(buckingTransformer(asked)).toMatchObject({ volts: 117, leastWindingAmperes: 2 });
  });

  it('a 6.3 V winding of a 120 V transformer takes 122 V to 115.60 V', () => {
    const asked = { mainsVolts: 122, windingVolts: 6.3, primaryVolts: 120, loadAmperes: 1 };
    expect(buckingTransformer(asked).volts).toBeCloseTo(115.595, 3);
  });

  it('a resistor does not raise', () => {
    expect(() => seriesDropper({ mainsVolts: 117, wantedVolts: 120, loadAmperes: 1 })).toThrow(
      /only lowers/,
    );
  });
});

describe('fuse and leakage', () => {
  it('200 W at 117 V, half as much again: 2.56 A, so 3 A or 3.15 A (rule of thumb, from memory)', () => {
    const asked = { runningAmperes: 200 / 117, factor: 1.5, makersAmperes: null };
    const found = fuseRating(asked);
    expect(found.wantedAmperes).toBeCloseTo(2.56, 2);
    expect(found).toMatchObject({ usAmperes: 3, iecAmperes: 3.15, isMakersLower: false });
    expect(fuseRating({ ...asked, makersAmperes: 2 }).isMakersLower).toBe(true);
  });

  const none = {
    mainsVolts: 120,
    earthBondOhms: null,
    insulationMegohms: null,
    touchMilliamperes: null,
  };

  it('0.5 mA at 120 V is 240 kΩ, 0.75 mA is 160 kΩ (UL 8750, 8.7.1)', () => {
    const through = (insulationMegohms: number) =>
      leakage({ ...none, insulationMegohms }).throughInsulationMilliamperes;
    expect(through(0.24)).toBeCloseTo(0.5, 9);
    expect(through(0.16)).toBeCloseTo(0.75, 9);
  });

  it('0.1 Ω of earth bond is kept, more is not (UL 507); what was not measured is named so', () => {
    const outcomes = (earthBondOhms: number) =>
      leakage({ ...none, earthBondOhms }).limits.map(
        ({ measure, outcome }) => `${measure} ${outcome}`,
      );
    expect(outcomes(0.1)).toContain('EARTH_BOND KEPT');
    expect(outcomes(0.11)).toContain('EARTH_BOND BROKEN');
    expect(outcomes(0.1)).toContain('INSULATION NOT_MEASURED');
    expect(() => leakage(none)).toThrow(/at least one measurement/);
  });

  it('0.6 mA breaks the half milliampere and keeps 0.75 mA: the limits differ', () => {
    const found = leakage({ ...none, touchMilliamperes: 0.6 }).limits;
    const words = found
      .filter(({ measure }) => measure === 'TOUCH_CURRENT')
      .map(({ limit, outcome }) => `${limit.toFixed(2)} ${outcome}`);
    expect(words).toEqual([
      '0.50 BROKEN',
      '0.50 BROKEN',
      '0.75 KEPT',
      '0.49 BROKEN',
      '0.50 BROKEN',
    ]);
  });
});
