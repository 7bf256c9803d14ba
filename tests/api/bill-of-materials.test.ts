import { parse } from 'csv-parse/sync';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { done } from '../support/catalogue.js';
import { benchStory, type BenchStory } from '../support/benchStory.js';
import { spareStory, type SpareStory } from '../support/spareStory.js';
import { testApi, type TestApi } from '../support/testApi.js';

describe.each(['sqlite', 'postgres'] as const)(
  'what to get, and what spares cost, on %s',
  (engine) => {
    let api: TestApi;
    let bench: BenchStory;
    let spares: SpareStory;
    beforeAll(async () => {
      api = await testApi(engine);
      bench = await benchStory(api);
      spares = spareStory(api);
    });
    afterAll(() => api?.close());

    const ofRig = async (fields: string, id = bench.rig) =>
      (await api.ask(`query ($id: ID!) { node(id: $id) { ... on Rig { ${fields} } } }`, { id }))
        .node;
    const ofPart = async (id: string, fields: string) =>
      (
        await api.ask(`query ($id: ID!) { node(id: $id) { ... on PartType { ${fields} } } }`, {
          id,
        })
      ).node;

    it('lists everything that a set needs, with what is on the shelf', async () => {
      await done(
        api,
        'recordInspection',
        {
          itemId: bench.rig,
          fitOutChecks: [
            { designator: 'V1', state: 'MISSING' },
            { designator: 'V2', state: 'MISSING' },
            { designator: 'C12', state: 'MISSING' },
          ],
        },
        'inspection { id }',
      );
      const taskId = await spares.task(bench.rig);
      const wire = await spares.partType('=hook-up wire');
      await done(
        api,
        'setPartsNeeded',
        {
          id: taskId,
          version: 1,
          parts: [
            { partTypeId: bench.tubeType, quantity: 1 },
            { partTypeId: wire, quantity: 3 },
          ],
        },
        'task { id }',
      );
      await done(api, 'addWant', { description: 'dial lamp', itemId: bench.rig }, 'want { id }');
      await spares.add({
        partTypeId: bench.tubeType,
        quantity: 4,
        condition: 'USED_TESTED',
        cost: { amount: '40.00', currency: 'EUR' },
      });
      await spares.reserve({ taskId, partTypeId: bench.tubeType, quantity: 1 });
      const { billOfMaterials: bill } = await ofRig(`billOfMaterials(spares: 2) { unknown csv
      lines { name designators needed forTasks spares inStock putAside wanted toOrder partType { designation } }
      basis { counted { what count } } }`);
      expect(bill.unknown).toEqual(['C12']);
      expect(bill.lines).toMatchObject([
        {
          name: '6146B',
          designators: ['V1', 'V2'],
          needed: 2,
          forTasks: 1,
          inStock: 3,
          putAside: 1,
          toOrder: 0,
        },
        { name: '=hook-up wire', needed: 3, inStock: 0, toOrder: 5 },
        { name: 'dial lamp', needed: 1, wanted: 1, toOrder: 3, partType: null },
      ]);
      const rows: string[][] = parse(bill.csv);
      expect(rows).toHaveLength(4);
      expect(rows[2]?.[1]).toBe("'=hook-up wire");
      expect(bill.csv.endsWith('\r\n')).toBe(true);
      expect(
        (
          await ofPart(
            bench.tubeType,
            'stock { onHandQuantity reservedQuantity availableQuantity }',
          )
        ).stock,
      ).toEqual({
        onHandQuantity: 4,
        reservedQuantity: 1,
        availableQuantity: 3,
      });
      expect((await ofPart(wire, 'stock { onHandQuantity }')).stock.onHandQuantity).toBe(0);
    });

    it('says what the spares cost that went into a set, beside the cost to date', async () => {
      const [lot] = await spares.lots({ partTypeId: bench.tubeType });
      const { problems } = await spares.fit({
        itemId: bench.rig,
        designator: 'V1',
        fromStock: { lotId: lot.id },
      });
      expect(problems).toEqual([]);
      const { fittedSpares, cost } = await ofRig(`
      fittedSpares { amounts { amount currency } unitCount uncostedUnitCount basis { assumptions } }
      cost { byCurrency { total { amount } } basis { method } }`);
      expect(fittedSpares).toMatchObject({
        amounts: [{ amount: '10.00', currency: 'EUR' }],
        unitCount: 1,
        uncostedUnitCount: 0,
      });
      expect(fittedSpares.basis.assumptions[0]).toMatch(/twice/);
      expect(cost.byCurrency).toEqual([]);
      expect(cost.basis.method).toMatch(/fittedSpares/);
    });

    it('names a set as a donor where a check found the place filled', async () => {
      const lacking = () =>
        ofRig(
          'missingParts { partType { designation } donors { designator evidence item { inventoryNumber } } }',
        );
      await done(
        api,
        'recordInspection',
        { itemId: bench.otherRig, fitOutChecks: [{ designator: 'V3', state: 'PRESENT' }] },
        'inspection { id }',
      );
      const { missingParts } = await lacking();
      const tubes = missingParts.filter(({ partType }: any) => partType?.designation === '6146B');
      expect(tubes[0].donors).toEqual([
        { designator: 'V3', evidence: 'CHECK', item: { inventoryNumber: 'R-002' } },
      ]);
      api.nowMs += 1000;
      await done(
        api,
        'recordInspection',
        { itemId: bench.otherRig, fitOutChecks: [{ designator: 'V3', state: 'MISSING' }] },
        'inspection { id }',
      );
      const after = (await lacking()).missingParts;
      expect(after.flatMap(({ donors }: any) => donors)).toEqual([]);
    });

    it('lets a collector write a base and class down, which count with a source', async () => {
      const heater = (amperes: string) => [
        { name: 'heater voltage', value: '6.3', unit: 'V', source: 'invented tube manual, p. 3' },
        { name: 'heater current', value: amperes, unit: 'A', source: 'invented tube manual, p. 3' },
        {
          name: 'transconductance',
          value: '4000',
          unit: 'uS',
          source: 'invented tube manual, p. 3',
        },
        { name: 'plate dissipation', value: '3', unit: 'W', source: 'invented tube manual, p. 3' },
      ];
      const tube = {
        base: '7bk',
        tubeClass: 'REMOTE_PENTODE',
        source: 'invented tube manual, p. 3',
      };
      const make = async (designation: string, fit: object | null) =>
        (
          await done(
            api,
            'createPartType',
            { kind: 'TUBE', designation, ratings: heater('0.3'), tube: fit },
            'partType { id version }',
          )
        ).id;
      const one = await make('QX1', tube);
      const other = await make('QX2', { ...tube, source: null });
      const served = async () =>
        (
          await ofPart(one, 'substitutes { serves partType { designation } unconfirmed }')
        ).substitutes.find(({ partType }: any) => partType.designation === 'QX2');
      expect((await ofPart(one, 'tube { base tubeClass source isConfirmed }')).tube).toEqual({
        ...tube,
        base: '7BK',
        isConfirmed: true,
      });
      expect((await served()).serves).toBeNull();
      await done(api, 'changePartType', { id: other, version: 1, tube }, 'partType { id }');
      expect(await served()).toMatchObject({ serves: true, unconfirmed: [] });
      const { createPartType } = await api.ask(`mutation { createPartType(input: {
      kind: RESISTOR, designation: "1k", tube: { base: "knob" } }) { problems { path } } }`);
      expect(createPartType.problems.map(({ path }: any) => path.join('.'))).toEqual([
        'tube',
        'tube.base',
      ]);
    });
  },
);
