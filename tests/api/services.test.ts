import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { attempt, done } from '../support/catalogue.js';
import { testApi, type TestApi } from '../support/testApi.js';

describe.each(['sqlite', 'postgres'] as const)('accessories that serve rigs on %s', (engine) => {
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
  const answer =
    'service { id version role isExclusive startedAt endedAt rig { inventoryNumber } accessory { inventoryNumber } }';

  it('serve several at once, and are seen from both ends', async () => {
    const supply = await accessory('A-100', 'POWER_SUPPLY');
    const [one, two] = [await rig('R-100'), await rig('R-101')];
    const assign = (rigId: string) =>
      done(api, 'assignAccessory', { accessoryId: supply.id, rigId, role: 'POWER_SUPPLY' }, answer);
    const first = await assign(one.id);
    await assign(two.id);
    expect(first).toMatchObject({ isExclusive: false, rig: { inventoryNumber: 'R-100' } });
    const query = `{
        item(inventoryNumber: "A-100") { ... on Accessory {
          serves { role rig { inventoryNumber servedBy { accessory { inventoryNumber } } } }
          all: serves(withEnded: true) { endedAt }
        } }
      }`;
    const { item } = await api.ask(query);
    expect((item.serves as { rig: unknown }[]).map((service) => service.rig)).toEqual([
      { inventoryNumber: 'R-100', servedBy: [{ accessory: { inventoryNumber: 'A-100' } }] },
      { inventoryNumber: 'R-101', servedBy: [{ accessory: { inventoryNumber: 'A-100' } }] },
    ]);
    const ended = await done(api, 'releaseAccessory', { serviceId: first.id, version: 1 }, answer);
    expect(ended.endedAt).not.toBeNull();
    const again = await attempt(
      api,
      'releaseAccessory',
      { serviceId: first.id, version: 2 },
      answer,
    );
    expect(again.problems).toMatchObject([{ code: 'CONFLICT' }]);
    const after = await api.ask(query);
    expect(after.item.serves).toHaveLength(1);
    expect(after.item.all).toHaveLength(2);
  });

  it('are refused a role that is not theirs; what they house is named', async () => {
    const cabinet = await accessory('A-110', 'SPEAKER');
    const inner = await accessory('A-111', 'POWER_SUPPLY');
    await done(
      api,
      'houseAccessory',
      { accessoryId: inner.id, housingId: cabinet.id },
      'accessory { id }',
    );
    const { id: rigId } = await rig('R-110');
    const { problems } = await attempt(
      api,
      'assignAccessory',
      { accessoryId: cabinet.id, rigId, role: 'POWER_SUPPLY' },
      answer,
    );
    expect(problems).toEqual([
      {
        code: 'INVALID',
        message: 'A-110 is a speaker, not a power supply. Assign A-111, housed in it.',
        path: ['role'],
      },
    ]);
    await done(api, 'assignAccessory', { accessoryId: cabinet.id, rigId, role: 'SPEAKER' }, answer);
    const changed = await attempt(
      api,
      'changeAccessory',
      { id: cabinet.id, version: 1, role: 'CONTROL' },
      'accessory { id }',
    );
    expect(changed.problems).toMatchObject([{ code: 'CONFLICT', path: ['role'] }]);
  });

  it('serve one rig alone when that is so, even if two assign them at the same time', async () => {
    const key = await accessory('A-120', 'KEY');
    const [one, two] = [await rig('R-120'), await rig('R-121')];
    const alone = (rigId: string) =>
      attempt(
        api,
        'assignAccessory',
        { accessoryId: key.id, rigId, role: 'KEY', isExclusive: true },
        answer,
      );
    const both = await Promise.all([alone(one.id), alone(two.id)]);
    expect(both.flatMap(({ problems }) => problems)).toMatchObject([
      { code: 'CONFLICT', path: ['accessoryId'] },
    ]);
  });

  it('serve nothing any more when they or the rig leave the collection', async () => {
    const vfo = await accessory('A-130', 'VFO');
    const { id: rigId } = await rig('R-130');
    const service = { accessoryId: vfo.id, rigId, role: 'VFO' };
    await done(api, 'assignAccessory', service, answer);
    await done(api, 'retireItem', { id: rigId, version: 1, reason: 'Sold.' }, 'item { id }');
    const { item } = await api.ask(
      `{ item(inventoryNumber: "A-130") { ... on Accessory { serves { id } } } }`,
    );
    expect(item.serves).toEqual([]);
    const again = await attempt(api, 'assignAccessory', service, answer);
    expect(again.problems[0]?.message).toBe('R-130 has left the collection. Return it first.');
  });
});
