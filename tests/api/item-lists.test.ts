import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { attempt, done } from '../support/catalogue.js';
import { plainItems } from '../support/plainItems.js';
import { testApi, type TestApi } from '../support/testApi.js';

describe.each(['sqlite', 'postgres'] as const)('lists of items on %s', (engine) => {
  let api: TestApi;
  let placeId: string;
  beforeAll(async () => {
    api = await testApi(engine);
    placeId = await plainItems(api, null, [
      {
        number: 'L-1',
        name: 'beta',
        standing: { hours: 1.5, completion: 0.25, rank: 0 },
        costs: { EUR: 10_050 },
      },
      {
        number: 'L-2',
        name: 'Alpha',
        standing: {
          hours: 10,
          completion: 1,
          rank: 3,
          checksValidUntil: '2026-06-02T12:00:00.000Z',
        },
        costs: { EUR: 9_900, JPY: 50_000 },
      },
      { number: 'L-3', standing: { hours: 2, rank: 3 } },
      { number: 'L-4', name: 'gamma', standing: null, costs: { JPY: 7_000 } },
    ]);
  });
  afterAll(() => api.close());

  const numbers = async (filter: object, sort: object | null = null): Promise<string[]> => {
    const { rigs } = await api.ask(
      `query ($filter: ItemFilter!, $sort: ItemSort) {
        rigs(filter: $filter, sort: $sort) { totalCount nodes { inventoryNumber } }
      }`,
      { filter: { placeId, ...filter }, sort },
    );
    const found = (rigs.nodes as { inventoryNumber: string }[]).map((node) => node.inventoryNumber);
    expect(rigs.totalCount).toBe(found.length);
    return found;
  };

  it.each([
    [{ by: 'INVENTORY_NUMBER' }, ['L-1', 'L-2', 'L-3', 'L-4']],
    [{ by: 'INVENTORY_NUMBER', direction: 'DESC' }, ['L-4', 'L-3', 'L-2', 'L-1']],
    [{ by: 'NAME' }, ['L-3', 'L-2', 'L-1', 'L-4']],
    [{ by: 'HOURS' }, ['L-4', 'L-1', 'L-3', 'L-2']],
    [{ by: 'COMPLETION', direction: 'DESC' }, ['L-2', 'L-1', 'L-4', 'L-3']],
    [{ by: 'READINESS', direction: 'DESC' }, ['L-3', 'L-2', 'L-1', 'L-4']],
    [{ by: 'COST', currency: 'EUR', direction: 'DESC' }, ['L-1', 'L-2', 'L-4', 'L-3']],
    [{ by: 'COST', currency: 'JPY' }, ['L-1', 'L-3', 'L-4', 'L-2']],
  ])('go by %j', async (sort, expected) => {
    expect(await numbers({}, sort)).toEqual(expected);
  });

  it.each([
    [{ hoursAtLeast: 1.5 }, ['L-1', 'L-2', 'L-3']],
    [{ hoursAtLeast: 1.5, hoursAtMost: 2 }, ['L-1', 'L-3']],
    [{ hoursAtMost: 0 }, ['L-4']],
    [{ completionAtLeast: 0 }, ['L-1', 'L-2']],
    [{ completionAtMost: 0.25 }, ['L-1']],
    [{ cost: { currency: 'EUR' } }, ['L-1', 'L-2']],
    [{ cost: { currency: 'EUR', atLeast: '99.01' } }, ['L-1']],
    [{ cost: { currency: 'JPY', atMost: '7000' } }, ['L-4']],
    [{ readiness: ['ON_AIR_READY'] }, ['L-2', 'L-3']],
    [{ readiness: ['DO_NOT_CONNECT', 'CHECKS_DUE'] }, ['L-1']],
    [{ readiness: [] }, []],
  ])('hold what is within %j', async (filter, expected) => {
    expect(await numbers(filter)).toEqual(expected);
  });

  it('take a rig whose final checks have lapsed for one whose checks are due', async () => {
    const before = api.nowMs;
    try {
      api.nowMs = Date.parse('2026-06-02T12:00:00Z');
      expect(await numbers({ readiness: ['ON_AIR_READY'] })).toEqual(['L-3']);
      expect(await numbers({ readiness: ['CHECKS_DUE'] })).toEqual(['L-2']);
    } finally {
      api.nowMs = before;
    }
  });

  it.each([
    ['{ rigs(sort: { by: COST }) { totalCount } }', 'say in which "currency"'],
    ['{ rigs(filter: { completionAtLeast: 40 }) { totalCount } }', 'from 0 to 1'],
    ['{ rigs(filter: { hoursAtLeast: 1e300 }) { totalCount } }', 'from 0 to'],
    ['{ rigs(filter: { placeId: "cellar" }) { totalCount } }', 'is not an id'],
    ['{ rigs(filter: { cost: { currency: "JPY", atLeast: "0.5" } }) { totalCount } }', ''],
    [`{ rigs(filter: { text: "${'x'.repeat(300)}" }) { totalCount } }`, '200 is the most'],
    ['{ rigs(after: "bm9uc2Vuc2U", sort: { by: HOURS }) { totalCount } }', 'not a cursor'],
    ['{ rigs(first: 101) { totalCount } }', 'from 1 to 100'],
  ])('are refused with a reason: %.70s', async (query, reason) => {
    const { errors } = await api.tryToAsk(query);
    expect(errors?.[0]?.extensions['code']).toBe('BAD_USER_INPUT');
    expect(errors?.[0]?.message).toContain(reason);
  });

  it('find nothing, and do not fail, by a text with a null character in it', async () => {
    const { item, rigs, parties } = await api.ask(
      `query ($text: String!) {
        item(inventoryNumber: $text) { id }
        rigs(filter: { band: $text, text: $text }) { totalCount }
        parties(filter: { text: $text }) { totalCount }
      }`,
      { text: 'nothing\u0000here' },
    );
    expect([item, rigs.totalCount, parties.totalCount]).toEqual([null, 0, 0]);
  });

  it('refuse a cursor that comes from another order', async () => {
    const { rigs } = await api.ask('{ rigs(first: 1) { pageInfo { endCursor } } }');
    const { errors } = await api.tryToAsk(
      'query ($after: String) { rigs(after: $after, sort: { by: HOURS }) { totalCount } }',
      { after: rigs.pageInfo.endCursor },
    );
    expect(errors?.[0]?.message).toContain('another order');
  });

  describe('found by words', () => {
    beforeAll(async () => {
      const model = {
        itemKind: 'RIG',
        maker: 'Northmoor',
        designation: 'WX-12',
        description: 'Façade of oak',
        capabilities: [
          { band: '40m', mode: 'CW' },
          { band: '20m', mode: 'AM' },
        ],
      };
      const { id: modelId } = await done(api, 'createModel', model, 'model { id }');
      const room = await done(api, 'createPlace', { name: 'Room' }, 'place { id }');
      const box = await done(
        api,
        'createPlace',
        { name: 'Box', withinId: room.id },
        'place { id }',
      );
      await done(
        api,
        'createRig',
        { inventoryNumber: 'W-1', name: 'Café set', modelId, placeId: box.id },
        'rig { id }',
      );
      await done(
        api,
        'createAccessory',
        { inventoryNumber: 'W-2', role: 'SPEAKER', name: 'Café speaker', placeId: room?.id },
        'accessory { id }',
      );
    });

    const found = async (filter: object): Promise<string[]> => {
      const { items } = await api.ask(
        `query ($filter: ItemFilter!) { items(filter: $filter) { nodes { inventoryNumber } } }`,
        { filter },
      );
      return (items.nodes as { inventoryNumber: string }[]).map((node) => node.inventoryNumber);
    };

    it.each([
      ['cafe', ['W-1', 'W-2']],
      ['CAFÉ speak', ['W-2']],
      ['northmoor', ['W-1']],
      ['facade', ['W-1']],
      ['set façade', ['W-1']],
      ['w 2', ['W-2']],
      ['" OR 1', []],
      ['!!', []],
      ['café:* | x', []],
    ])('%s', async (text, expected) => {
      expect(await found({ text })).toEqual(expected);
    });

    it('of the model, of a place with what is in it, of a role, of a band and mode', async () => {
      const { places, models } = await api.ask(
        `{ places { nodes { id name } } models { nodes { id } } }`,
      );
      const room = (places.nodes as { id: string; name: string }[]).find(
        (one) => one.name === 'Room',
      );
      expect(await found({ placeId: room?.id })).toEqual(['W-1', 'W-2']);
      expect(await found({ placeId: room?.id, role: 'SPEAKER' })).toEqual(['W-2']);
      expect(await found({ modelId: models.nodes[0].id })).toEqual(['W-1']);
      expect(await found({ band: '40m', mode: 'CW' })).toEqual(['W-1']);
      expect(await found({ band: '40m', mode: 'AM' })).toEqual([]);
      expect(await found({ mode: 'AM' })).toEqual(['W-1']);
      const { accessories } = await api.ask(
        `{ accessories { totalCount nodes { __typename role } } }`,
      );
      expect(accessories).toEqual({
        totalCount: 1,
        nodes: [{ __typename: 'Accessory', role: 'SPEAKER' }],
      });
    });

    it('follow a change of the model at once', async () => {
      const { models } = await api.ask(`{ models { nodes { id version } } }`);
      const [{ id, version }] = models.nodes;
      await attempt(api, 'changeModel', { id, version, maker: 'Meadow' }, 'model { id }');
      expect(await found({ text: 'meadow' })).toEqual(['W-1']);
      expect(await found({ text: 'northmoor' })).toEqual([]);
    });
  });

  it('cost as many statements for fifty rigs as for five', async () => {
    await plainItems(
      api,
      null,
      Array.from({ length: 60 }, (_, index) => ({ number: `M-${100 + index}` })),
    );
    const cost = async (first: number): Promise<number> => {
      const before = api.statements();
      const { rigs } = await api.ask(
        `query ($first: Int!) { rigs(first: $first, sort: { by: HOURS }) { totalCount nodes {
          inventoryNumber model { designation capabilities { band } fitOut(first: 5) { nodes { designator } } }
          place { name } moves(first: 2) { nodes { toPlace { name } } }
          servedBy { role accessory { inventoryNumber housedIn { inventoryNumber } } }
          history(first: 2) { nodes { action changedFields } }
        } } }`,
        { first },
      );
      expect(rigs.nodes).toHaveLength(first);
      return api.statements() - before;
    };
    const five = await cost(5);
    expect(await cost(50)).toBe(five);
    expect(five).toBeLessThan(15);
  });
});
