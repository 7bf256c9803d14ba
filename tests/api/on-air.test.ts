import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { carried } from '../support/carried.js';
import { shackStory } from '../support/shackStory.js';
import { testApi, type TestApi } from '../support/testApi.js';

const DAY_MS = 86_400_000;

describe.each(['sqlite', 'postgres'] as const)('what can be on the air on %s', (engine) => {
  let api: TestApi;
  let strong: string;
  let weak: string;
  beforeAll(async () => {
    api = await testApi(engine);
    const story = shackStory(api);
    const model = await story.model('Pellmere 80', {
      capabilities: [
        { band: '40m', mode: 'CW', outputMilliwatts: 80_000 },
        { band: '20m', mode: 'CW', outputMilliwatts: 80_000 },
      ],
      roles: [{ role: 'POWER_SUPPLY', isRequired: true }],
    });
    strong = await story.rig('R-1', model);
    weak = await story.rig('R-2', model);
    await story.rig(
      'R-3',
      await story.model('Receiver', { capabilities: [{ band: '40m', mode: 'CW' }] }),
    );
    const supply = await story.accessory('PS-1', 'POWER_SUPPLY');
    for (const rig of [strong, weak]) await story.serves(supply, rig, 'POWER_SUPPLY');
    const settings = {
      version: 0,
      zone: 'Europe/Berlin',
      ituRegion: 'REGION_1',
      licenceClass: 'full',
    };
    const described = await carried(
      api,
      'describeCollection',
      settings,
      'collection',
      '{ ituRegion licenceClass }',
    );
    expect(described).toEqual({ ituRegion: 'REGION_1', licenceClass: 'full' });
  }, 60_000);
  afterAll(() => api.close());

  const measure = (itemId: string, quantity: string, value: string, unit = 'W') =>
    carried(
      api,
      'recordReadings',
      { readings: [{ itemId, quantity, value, unit, tier: 'IN_CIRCUIT' }] },
      'readings',
    );
  const onAir = async (args: string) =>
    (
      await api.ask(`{ onAir(${args}) { at licenceNotice allocation { lowerKilohertz upperKilohertz region }
        rigs { watts restsOn isAtOnce rig { inventoryNumber } reading { value }
          servedBy { role accessory { inventoryNumber } } }
        leftOut { rig { inventoryNumber } reasons } } }`)
    ).onAir;
  const numbers = (rigs: any[]) => rigs.map(({ rig }) => rig.inventoryNumber);

  it('follows the model until a reading decides', async () => {
    const before = await onAir('band: "40 m", mode: "CW", atLeastWatts: 50');
    expect(numbers(before.rigs)).toEqual(['R-1', 'R-2']);
    expect(before.rigs[0]).toMatchObject({ watts: 80, restsOn: 'MODEL', reading: null });
    expect(before.leftOut).toEqual([
      { rig: { inventoryNumber: 'R-3' }, reasons: ['No output power is recorded on 40m CW.'] },
    ]);
    await measure(strong, 'output power 40m CW', '58');
    await measure(weak, 'Output power  40m', '0.031', 'kW');
    const after = await onAir('band: "40m", mode: "CW", atLeastWatts: 50');
    expect(after.rigs).toMatchObject([
      {
        watts: 58,
        restsOn: 'READING',
        reading: { value: '58' },
        isAtOnce: true,
        servedBy: [{ role: 'POWER_SUPPLY', accessory: { inventoryNumber: 'PS-1' } }],
      },
    ]);
    expect(after.leftOut[0].reasons).toEqual([
      '31 W on 40m CW by a reading on 2026-06-01; 50 W are asked for.',
    ]);
    expect(numbers((await onAir('band: "20m", mode: "CW", atLeastWatts: 50')).rigs)).toEqual([
      'R-1',
      'R-2',
    ]);
  });

  it('names a dead band by its reading, and one supply serves one rig at a time', async () => {
    await measure(weak, 'output power 20m CW', '0');
    const dead = await onAir('band: "20m", mode: "CW"');
    expect(numbers(dead.rigs)).toEqual(['R-1']);
    expect(dead.leftOut[0].reasons).toEqual([
      'No output on 20m CW: a reading on 2026-06-01 found none.',
    ]);
    const both = await onAir('band: "40m", mode: "CW"');
    expect(numbers(both.rigs)).toEqual(['R-1', 'R-2', 'R-3']);
    expect(both.rigs.filter(({ isAtOnce }: any) => isAtOnce)).toHaveLength(2);
  });

  it('says what the band is here, and that the licence governs', async () => {
    const answer = await onAir('band: "40m", mode: "CW"');
    expect(answer.allocation).toEqual({
      lowerKilohertz: '7000',
      upperKilohertz: '7200',
      region: 'REGION_1',
    });
    expect(answer.licenceNotice).toMatch(/operator's licence governs \(here: full\)/);
  });

  it('asks about tonight in the zone of the collection, by when checks may lapse', async () => {
    const tonight = await onAir('band: "40m", mode: "CW", tonight: true');
    expect(tonight.at).toBe('2026-06-01T18:00:00.000Z');
    expect(tonight.rigs).toHaveLength(3);
    const nextYear = new Date(api.nowMs + 400 * DAY_MS).toISOString();
    const later = await onAir(`band: "40m", mode: "CW", at: "${nextYear}"`);
    expect(later.rigs).toEqual([]);
    expect(later.leftOut[0].reasons[0]).toMatch(/lapsed/);
    const wrong = await api.tryToAsk('{ onAir(band: "forty", mode: "CW") { at } }');
    expect(wrong.errors?.[0]?.message).toBe('Write the band as its wavelength: 40m, 70cm.');
  });
});
