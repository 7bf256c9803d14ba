import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { testApi, type TestApi } from '../support/testApi.js';

describe('calculators', () => {
  let api: TestApi;
  beforeAll(async () => {
    api = await testApi('sqlite');
  });
  afterAll(() => api.close());

  const working = 'working { formula inputs { name value unit } assumptions sources cautions }';
  const ask = async (fields: string) =>
    (await api.ask(`{ calculators { ${fields} } }`)).calculators;
  const refusal = async (fields: string): Promise<string> =>
    (await api.tryToAsk(`{ calculators { ${fields} } }`)).errors?.[0]?.message ?? '';

  it('answer with formula, inputs, assumptions, sources and cautions, all in one query', async () => {
    const answers = await ask(`
      dischargeTime(microfarads: 40, startVolts: 400, bleederOhms: 100000) {
        seconds joulesAtStart thresholds { rule limit isKept source isConfirmed } longestWait { rule } ${working} }
      bleederResistor(microfarads: 50, workingVolts: 800) { madeOhms ratedWatts ${working} }
      reforming(ratedVolts: 450) {
        applied { rule { name saying acceptedWhen source isConfirmed } seriesOhms steps { volts minutes } remarks }
        others { rule { name } worstMilliamperes worstWatts } byStorage ${working} }
      heaterVoltage(designMainsVolts: 110, mainsVolts: 125) { volts isWithinTolerance ${working} }
      seriesDropper(mainsVolts: 240, wantedVolts: 220, loadAmperes: 0.5) { ohms watts ${working} }
      buckingTransformer(mainsVolts: 122, windingVolts: 6.3, primaryVolts: 120, loadAmperes: 1) { volts ${working} }
      fuseRating(runningAmperes: 1.709) { usAmperes iecAmperes ${working} }
      leakage(mainsVolts: 120, earthBondOhms: 0.2) { limits { rule outcome source isConfirmed } ${working} }
      powerLevel(dbm: 50) { watts voltsRms ${working} }
      envelopePower(peakToPeakVolts: 200) { watts ${working} }
      mismatch(swr: 2) { returnLossDecibels ${working} }
      exposureDistance(envelopeWatts: 100, megahertz: 14.2) { distances { situation metres } ${working} }`);
    expect(answers.dischargeTime.seconds).toBeCloseTo(8.3178, 4);
    expect(answers.dischargeTime.longestWait.rule).toContain('60950');
    expect(answers.reforming.applied.rule.name).toBe('MAKER_NOTE_1993');
    expect(answers.reforming.others).toHaveLength(4);
    expect(answers.powerLevel.watts).toBeCloseTo(100, 9);
    expect(answers.envelopePower.watts).toBe(100);
    for (const answer of Object.values<Record<string, any>>(answers)) {
      const { formula, inputs, assumptions, sources, cautions } = answer['working'];
      expect(formula).not.toBe('');
      for (const list of [inputs, assumptions, sources, cautions]) {
        expect(list.length).toBeGreaterThan(0);
      }
    }
  });

  it.each([
    [
      'dischargeTime(microfarads: -1, startVolts: 0, bleederOhms: 0) { seconds }',
      /microfarads is -1.*startVolts is 0.*bleederOhms is 0/,
    ],
    [
      'dischargeTime(microfarads: 1, startVolts: 40, bleederOhms: 1) { seconds }',
      /less than startVolts/,
    ],
    ['bleederResistor(microfarads: 1e9, workingVolts: 800) { madeOhms }', /at most 1000000 uF/],
    [
      'reforming(ratedVolts: 450, supplyVolts: 460) { byStorage }',
      /never go above the rated voltage/,
    ],
    [
      'heaterVoltage(designMainsVolts: 0, mainsVolts: 120) { volts }',
      /designMainsVolts is 0; give at least 20/,
    ],
    ['seriesDropper(mainsVolts: 110, wantedVolts: 117, loadAmperes: 1) { ohms }', /only lowers/],
    [
      'buckingTransformer(mainsVolts: 120, windingVolts: 90, primaryVolts: 120, loadAmperes: 1) { volts }',
      /less than half/,
    ],
    ['fuseRating(runningAmperes: 1, factor: 20) { usAmperes }', /factor is 20/],
    ['leakage(mainsVolts: 120) { limits { rule } }', /at least one measurement/],
    ['powerLevel(watts: 1, dbm: 30) { dbm }', /these are 2/],
    ['mismatch(swr: 0.9) { swr }', /swr is 0.9/],
    [
      'exposureDistance(envelopeWatts: 100, megahertz: 14, onShare: 0) { averageWatts }',
      /onShare is 0; give more than 0/,
    ],
  ])('%s is refused with the reason', async (fields, message) => {
    expect(await refusal(fields)).toMatch(message);
  });
});
