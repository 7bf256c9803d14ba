import { parse } from 'csv-parse/sync';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { benchStory, type BenchStory } from '../support/benchStory.js';
import { attempt, done } from '../support/catalogue.js';
import { testApi, type TestApi } from '../support/testApi.js';

describe.each(['sqlite', 'postgres'] as const)('what is ordered, on %s', (engine) => {
  let api: TestApi;
  let bench: BenchStory;
  beforeAll(async () => {
    api = await testApi(engine);
    bench = await benchStory(api);
    const modelId = (await ofRig('model { id }')).model.id;
    const { id: paper } = await done(
      api,
      'createPartType',
      {
        kind: 'CAPACITOR',
        designation: 'paper 0.05/400',
        ratings: [
          { name: 'capacitance', value: '0.05', unit: 'uF' },
          { name: 'working voltage', value: '400', unit: 'V' },
        ],
      },
      'partType { id }',
    );
    await done(
      api,
      'addFitOutPositions',
      {
        modelId,
        positions: ['C1', 'C2', 'C3'].map((designator) => ({
          designator,
          partTypeId: paper,
          zone: 'WHOLE',
        })),
      },
      'model { id }',
    );
    await done(
      api,
      'recordInspection',
      {
        itemId: bench.rig,
        fitOutChecks: [
          { designator: 'V1', state: 'MISSING' },
          { designator: 'V2', state: 'MISSING' },
        ],
      },
      'inspection { id }',
    );
  });
  afterAll(() => api?.close());

  const ofRig = async (fields: string) =>
    (
      await api.ask(`query ($id: ID!) { node(id: $id) { ... on Rig { ${fields} } } }`, {
        id: bench.rig,
      })
    ).node;
  const order = (lines: Record<string, unknown>[], more: Record<string, unknown> = {}) =>
    attempt(
      api,
      'markOrdered',
      {
        orderedFrom: 'Harbour Spares',
        orderedOn: '2026-02-01',
        expectedOn: '2026-02-20',
        lines,
        ...more,
      },
      'orders { id version quantity designators orderedFrom expectedOn item { inventoryNumber } }',
    );

  it('takes what is on its way off the capacitor order, and names it in the CSV', async () => {
    const { value, problems } = await order([
      { itemId: bench.rig, description: '0.047 uF 630 V', designators: ['c1', 'C2'], quantity: 3 },
    ]);
    expect(problems).toEqual([]);
    expect(value).toMatchObject([
      { quantity: 3, designators: ['C1', 'C2'], orderedFrom: 'Harbour Spares' },
    ]);
    const { replacementList: list, partOrders } = await ofRig(`
      replacementList(spares: 1) { csv lines { designators quantity spares onOrder ordered toOrder } }
      partOrders { totalCount nodes { expectedOn } }`);
    expect(list.lines).toEqual([
      {
        designators: ['C1', 'C2', 'C3'],
        quantity: 3,
        spares: 1,
        onOrder: 3,
        ordered: ['3 on 2026-02-01 from Harbour Spares, expected 2026-02-20'],
        toOrder: 1,
      },
    ]);
    const [head = [], row = []]: string[][] = parse(list.csv);
    const cell = (name: string) => row[head.indexOf(name)];
    expect(['On order', 'Ordered on', 'Ordered from', 'Expected on', 'To order'].map(cell)).toEqual(
      ['3', '2026-02-01', 'Harbour Spares', '2026-02-20', '1'],
    );
    expect(partOrders).toMatchObject({ totalCount: 1 });
  });

  it('counts for the bill of materials and for the want; the sheet for the fair says so', async () => {
    const want = await done(
      api,
      'addWant',
      { partTypeId: bench.tubeType, itemId: bench.rig, designator: 'V1' },
      'want { id }',
    );
    const { value, problems } = await order([{ wantId: want.id }], { expectedOn: null });
    expect(problems).toEqual([]);
    expect(value[0].item.inventoryNumber).toBe('R-001');
    const { billOfMaterials: bill } = await ofRig(
      'billOfMaterials { csv lines { name needed onOrder toOrder orders { orderedFrom } } }',
    );
    expect(bill.lines).toEqual([
      {
        name: '6146B',
        needed: 2,
        onOrder: 1,
        toOrder: 1,
        orders: [{ orderedFrom: 'Harbour Spares' }],
      },
    ]);
    expect(bill.csv).toContain('not said');
    const { wantedList } = await api.ask(
      '{ wantedList { html wants { standing { openQuantity onOrderQuantity } orders { orderedOn } } } }',
    );
    expect(wantedList.wants).toEqual([
      { standing: { openQuantity: 1, onOrderQuantity: 1 }, orders: [{ orderedOn: '2026-02-01' }] },
    ]);
    expect(wantedList.html).toContain('1 on 2026-02-01 from Harbour Spares, no day said');
  });

  it('is not ordered twice, at once neither, unless somebody says so', async () => {
    const again = { itemId: bench.rig, description: 'film 0.047', designators: ['C2', 'C3'] };
    const twice = await order([again]);
    expect(twice.value).toBeNull();
    expect(twice.problems).toMatchObject([{ code: 'CONFLICT', path: ['lines', '0'] }]);
    expect(twice.problems[0]?.message).toContain(
      'For C2 one is ordered already: on 2026-02-01 from Harbour Spares, expected on 2026-02-20',
    );
    const wanted = { itemId: bench.rig, partTypeId: bench.tubeType, designators: ['V2'] };
    const atOnce = await Promise.all([order([wanted]), order([wanted])]);
    expect(atOnce.filter(({ value }) => value)).toHaveLength(1);
    const meant = await order([{ ...again, isOrderedAgain: true }]);
    expect(meant.problems).toEqual([]);
  });

  it('counts no more once it has come or was cancelled', async () => {
    const { value } = await order([{ partTypeId: bench.tubeType, quantity: 5 }]);
    const [{ id, version }] = value;
    const early = await attempt(
      api,
      'changePartOrder',
      { id, version, arrivedOn: '2026-01-31', quantity: 0 },
      'order { id }',
    );
    expect(early.problems.map(({ path }) => path[0])).toEqual(['quantity', 'arrivedOn']);
    const come = await done(
      api,
      'changePartOrder',
      { id, version, arrivedOn: '2026-02-18' },
      'order { arrivedOn version }',
    );
    expect(come).toMatchObject({ arrivedOn: '2026-02-18', version: 2 });
    const { open, all } = await api.ask(`{
      open: partOrders(first: 50) { nodes { id } } all: partOrders(first: 50, isOnItsWay: false) { nodes { id } } }`);
    expect(open.nodes).not.toContainEqual({ id });
    expect(all.nodes).toContainEqual({ id });
  });

  it('names all that is wrong at once', async () => {
    const { problems } = await order(
      [{ quantity: 0, description: 'fuse' }, { designators: ['V1'], description: 'fuse' }, {}],
      { orderedFrom: ' ', expectedOn: '2026-01-01' },
    );
    expect(problems.map(({ path }) => path.join('.'))).toEqual([
      'expectedOn',
      'orderedFrom',
      'lines.0.quantity',
      'lines.1.designators',
      'lines.2.description',
    ]);
    expect((await order([])).problems).toMatchObject([{ path: ['lines'] }]);
  });
});
