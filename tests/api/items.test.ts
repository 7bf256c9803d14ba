import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { attempt, done } from '../support/catalogue.js';
import { testApi, type TestApi } from '../support/testApi.js';

describe.each(['sqlite', 'postgres'] as const)('items on %s', (engine) => {
  let api: TestApi;
  beforeAll(async () => {
    api = await testApi(engine);
  });
  afterAll(() => api.close());

  const rig = (inventoryNumber: string, more = {}) =>
    done(api, 'createRig', { inventoryNumber, ...more }, 'rig { id version }');
  const place = (name: string, withinId: string | null = null) =>
    done(api, 'createPlace', { name, withinId }, 'place { id }');

  it('are written down with model and place, and found by their number', async () => {
    const shelf = await place('Shelf A');
    const model = await done(
      api,
      'createModel',
      { itemKind: 'RIG', maker: 'Northmoor', designation: 'NM-300' },
      'model { id }',
    );
    const made = await done(
      api,
      'createRig',
      {
        inventoryNumber: ' R-001 ',
        name: 'Old faithful',
        modelId: model.id,
        placeId: shelf.id,
        madeEdtf: '1963~',
      },
      `rig { id inventoryNumber madeEdtf model { designation } place { name }
        moves { nodes { fromPlace { name } toPlace { name } item { inventoryNumber } } } servedBy { id } }`,
    );
    expect(made).toMatchObject({
      inventoryNumber: 'R-001',
      madeEdtf: '1963~',
      model: { designation: 'NM-300' },
      place: { name: 'Shelf A' },
      servedBy: [],
    });
    expect(made.moves.nodes).toEqual([
      { fromPlace: null, toPlace: { name: 'Shelf A' }, item: { inventoryNumber: 'R-001' } },
    ]);
    const {
      item,
      rig: sameRig,
      none,
      node,
    } = await api.ask(
      `query ($id: ID!) {
        item(inventoryNumber: "R-001") { __typename id model { items { nodes { inventoryNumber } } } }
        rig(inventoryNumber: "R-001") { id }
        none: item(inventoryNumber: "R-999") { id }
        node(id: $id) { ... on Rig { name history { totalCount nodes { action changedFields } } } }
      }`,
      { id: made.id },
    );
    expect(item).toEqual({
      __typename: 'Rig',
      id: made.id,
      model: { items: { nodes: [{ inventoryNumber: 'R-001' }] } },
    });
    expect(sameRig.id).toBe(made.id);
    expect(none).toBeNull();
    expect(node.history.nodes).toEqual([
      {
        action: 'createRig',
        changedFields: ['inventoryNumber', 'kind', 'madeEdtf', 'modelId', 'name', 'placeId'],
      },
    ]);
  });

  it('have a number each: a second one is refused, and who has it is named', async () => {
    await rig('R-002', { name: 'Attic find' });
    const twin = await attempt(
      api,
      'createAccessory',
      { inventoryNumber: 'R-002', role: 'KEY' },
      'accessory { id }',
    );
    expect(twin.problems).toEqual([
      {
        code: 'CONFLICT',
        message: 'R-002 “Attic find” has this number: a rig. Choose another number.',
        path: ['inventoryNumber'],
      },
    ]);
    const other = await rig('R-003');
    const renumbered = await attempt(
      api,
      'changeRig',
      { id: other.id, version: 1, inventoryNumber: 'R-002' },
      'rig { id }',
    );
    expect(renumbered.problems).toMatchObject([{ code: 'CONFLICT' }]);
    const both = await Promise.all([
      attempt(api, 'createRig', { inventoryNumber: 'R-004' }, 'rig { id }'),
      attempt(api, 'createRig', { inventoryNumber: 'R-004' }, 'rig { id }'),
    ]);
    const refused = both.flatMap(({ problems }) => problems);
    expect(refused).toMatchObject([{ code: 'CONFLICT' }]);
  });

  it.each(['1963', '1963-05-12', '1963?', '196X', '1962/1964', '[1962,1964]', '1963-05~'])(
    'take %s for a date of making',
    async (madeEdtf) => {
      const { problems } = await attempt(
        api,
        'createRig',
        { inventoryNumber: `E-${madeEdtf}`, madeEdtf },
        'rig { madeEdtf }',
      );
      expect(problems).toEqual([]);
    },
  );

  it.each(['about 1963', '03/04/1963', '['.repeat(80), '1'.repeat(100_000)])(
    'refuse %.20s for a date of making, in one sentence',
    async (madeEdtf) => {
      const { problems } = await attempt(
        api,
        'createRig',
        { inventoryNumber: 'E-1', madeEdtf },
        'rig { id }',
      );
      expect(problems).toMatchObject([{ code: 'INVALID', path: ['madeEdtf'] }]);
      expect(problems[0]?.message.length).toBeLessThan(300);
    },
  );

  it('are refused a model of the other kind, with every other problem', async () => {
    const supply = await done(
      api,
      'createModel',
      { itemKind: 'ACCESSORY', maker: 'Northmoor', designation: 'PS-1' },
      'model { id }',
    );
    const { problems } = await attempt(
      api,
      'createRig',
      { inventoryNumber: '', modelId: supply.id, name: 'x'.repeat(201), madeEdtf: 'never' },
      'rig { id }',
    );
    expect(problems.map(({ path }) => path[0]).sort()).toEqual([
      'inventoryNumber',
      'madeEdtf',
      'modelId',
      'name',
    ]);
  });

  it('change on the version that was seen, and keep what is left out', async () => {
    const { id } = await rig('R-010', { name: 'Ten', note: 'Loose knob.' });
    const answer = 'rig { version name note serialNumber }';
    const change = { id, version: 1, serialNumber: '4711', name: null };
    expect(await done(api, 'changeRig', change, answer)).toEqual({
      version: 2,
      name: null,
      note: 'Loose knob.',
      serialNumber: '4711',
    });
    const emptied = await attempt(
      api,
      'changeRig',
      { id, version: 2, inventoryNumber: null, note: 'A null \u0000 in it.' },
      answer,
    );
    expect(emptied.problems).toMatchObject([{ code: 'INVALID', path: ['note'] }]);
    const late = await attempt(api, 'changeRig', { id, version: 1, name: 'X' }, answer);
    expect(late.problems).toMatchObject([{ code: 'OUT_OF_DATE' }]);
    const asAccessory = await attempt(
      api,
      'changeAccessory',
      { id, version: 2, name: 'X' },
      'accessory { id }',
    );
    expect(asAccessory.problems).toMatchObject([{ code: 'INVALID', path: ['id'] }]);
  });

  it('leave the collection for a reason, and come back', async () => {
    const { id } = await rig('R-020');
    const without = await attempt(
      api,
      'retireItem',
      { id, version: 1, reason: ' ' },
      'item { id }',
    );
    expect(without.problems).toMatchObject([{ code: 'INVALID', path: ['reason'] }]);
    const gone = await done(
      api,
      'retireItem',
      { id, version: 1, reason: 'Given to the club.' },
      'item { __typename retiredAt retiredReason ... on Rig { servedBy { id } } }',
    );
    expect(gone).toMatchObject({ __typename: 'Rig', retiredReason: 'Given to the club.' });
    const seen = await api.ask(`{
      here: rigs(filter: { text: "R-020" }) { totalCount }
      gone: rigs(filter: { text: "R-020", isRetired: true }) { nodes { retiredReason } }
      all: rigs(filter: { text: "R-020", isRetired: null }) { totalCount }
    }`);
    expect(seen.here.totalCount).toBe(0);
    expect(seen.gone.nodes).toEqual([{ retiredReason: 'Given to the club.' }]);
    expect(seen.all.totalCount).toBe(1);
    const back = await done(api, 'returnItem', { id, version: 2 }, 'item { retiredAt }');
    expect(back.retiredAt).toBeNull();
  });

  it('are moved, one move after another, and where they were stays known', async () => {
    const [cellar, bench] = [await place('Cellar'), await place('Bench')];
    const { id } = await rig('R-030', { placeId: cellar.id });
    const answer = `item { place { name } moves(first: 1) { totalCount nodes { id version fromPlace { name } toPlace { name } note } pageInfo { hasNextPage } } }`;
    api.nowMs += 60_000;
    const moved = await done(
      api,
      'moveItem',
      { itemId: id, placeId: bench.id, note: 'To be looked at.' },
      answer,
    );
    expect(moved).toMatchObject({ place: { name: 'Bench' }, moves: { totalCount: 2 } });
    expect(moved.moves.nodes[0]).toMatchObject({
      fromPlace: { name: 'Cellar' },
      toPlace: { name: 'Bench' },
    });
    expect(moved.moves.pageInfo.hasNextPage).toBe(true);
    const { problems } = await attempt(
      api,
      'moveItem',
      { itemId: id, placeId: bench.id, movedAt: '1999-01-01T00:00:00Z' },
      answer,
    );
    expect(problems.map(({ path }) => path[0])).toEqual(['placeId', 'movedAt']);
    const corrected = await done(
      api,
      'changeMove',
      { id: moved.moves.nodes[0].id, version: 1, note: 'For inspection.' },
      'move { note version }',
    );
    expect(corrected).toEqual({ note: 'For inspection.', version: 2 });
  });
});
