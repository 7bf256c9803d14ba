import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { attempt, done } from '../support/catalogue.js';
import { testApi, type TestApi } from '../support/testApi.js';

describe.each(['sqlite', 'postgres'] as const)('accessories in housings on %s', (engine) => {
  let api: TestApi;
  beforeAll(async () => {
    api = await testApi(engine);
  });
  afterAll(() => api.close());

  const rig = (inventoryNumber: string, more = {}) =>
    done(api, 'createRig', { inventoryNumber, ...more }, 'rig { id version }');
  const accessory = (inventoryNumber: string, role: string, more = {}) =>
    done(
      api,
      'createAccessory',
      { inventoryNumber, role, ...more },
      'accessory { id version inventoryNumber }',
    );
  const place = (name: string, withinId: string | null = null) =>
    done(api, 'createPlace', { name, withinId }, 'place { id }');

  it('stand where their housing stands, and move with it', async () => {
    const [rack, bench] = [await place('Rack'), await place('Side bench')];
    const speaker = await accessory('A-001', 'SPEAKER', { placeId: rack.id });
    const supply = await accessory('A-002', 'POWER_SUPPLY');
    const fan = await accessory('A-003', 'CONTROL');
    const answer =
      'accessory { housedIn { inventoryNumber } houses { inventoryNumber } place { name } }';
    const housed = await done(
      api,
      'houseAccessory',
      { accessoryId: supply.id, housingId: speaker.id },
      answer,
    );
    expect(housed).toEqual({
      housedIn: { inventoryNumber: 'A-001' },
      houses: [],
      place: { name: 'Rack' },
    });
    await done(api, 'houseAccessory', { accessoryId: fan.id, housingId: supply.id }, answer);
    const alone = await attempt(
      api,
      'moveItem',
      { itemId: supply.id, placeId: bench.id },
      'item { id }',
    );
    expect(alone.problems[0]?.message).toBe(
      'It is housed in A-001. Move that, or take it out first.',
    );
    await done(api, 'moveItem', { itemId: speaker.id, placeId: bench.id }, 'item { id }');
    const { item } = await api.ask(`{ item(inventoryNumber: "A-003") { place { name } } }`);
    expect(item.place.name).toBe('Side bench');
    const circle = await attempt(
      api,
      'houseAccessory',
      { accessoryId: speaker.id, housingId: fan.id },
      answer,
    );
    expect(circle.problems).toEqual([
      {
        code: 'CONFLICT',
        message: 'That would house it inside itself: A-001 in A-003 in A-002 in A-001.',
        path: ['housingId'],
      },
    ]);
    const itself = await attempt(
      api,
      'houseAccessory',
      { accessoryId: fan.id, housingId: fan.id },
      answer,
    );
    expect(itself.problems[0]?.message).toContain('A-003 in A-003');
    const aRig = await rig('R-040');
    const inRig = await attempt(
      api,
      'houseAccessory',
      { accessoryId: fan.id, housingId: aRig.id },
      answer,
    );
    expect(inRig.problems).toMatchObject([{ code: 'INVALID', path: ['housingId'] }]);
    const full = await attempt(
      api,
      'retireItem',
      { id: speaker.id, version: 2, reason: 'Sold.' },
      'item { id }',
    );
    expect(full.problems).toMatchObject([{ code: 'CONFLICT', path: ['id'] }]);
    const out = await done(api, 'takeOutOfHousing', { accessoryId: supply.id }, answer);
    expect(out).toMatchObject({ housedIn: null, place: { name: 'Side bench' } });
  });

  it('never end up in a circle when two are housed in one another at the same time', async () => {
    const [a, b] = [await accessory('A-010', 'SPEAKER'), await accessory('A-011', 'SPEAKER')];
    const both = await Promise.all([
      attempt(api, 'houseAccessory', { accessoryId: a.id, housingId: b.id }, 'accessory { id }'),
      attempt(api, 'houseAccessory', { accessoryId: b.id, housingId: a.id }, 'accessory { id }'),
    ]);
    expect(both.flatMap(({ problems }) => problems)).toMatchObject([{ code: 'CONFLICT' }]);
  });
});
