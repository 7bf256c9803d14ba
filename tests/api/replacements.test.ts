import { parse } from 'csv-parse/sync';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { done } from '../support/catalogue.js';
import { testApi, type TestApi } from '../support/testApi.js';

describe.each(['sqlite', 'postgres'] as const)('what a set needs, on %s', (engine) => {
  let api: TestApi;
  let model: string;
  let tube: string;
  let rig: string;
  let other: string;
  beforeAll(async () => {
    api = await testApi(engine);
    const part = async (kind: string, designation: string, ratings: object[] = []) =>
      (await done(api, 'createPartType', { kind, designation, ratings }, 'partType { id }')).id;
    const capacitor = (name: string, value: string, volts: string | null) =>
      part('CAPACITOR', name, [
        { name: 'capacitance', value, unit: 'uF' },
        ...(volts === null ? [] : [{ name: 'working voltage', value: volts, unit: 'V' }]),
      ]);
    tube = await part('TUBE', '6BA6');
    const obsolete = await capacitor('paper .05/400', '0.05', '400');
    const positions = [
      { designator: 'V1', zone: 'CHASSIS_TOP', partTypeId: tube },
      { designator: 'C1', zone: 'CHASSIS_UNDERSIDE', partTypeId: obsolete },
      { designator: 'C2', zone: 'CHASSIS_UNDERSIDE', partTypeId: obsolete },
      {
        designator: 'C10',
        zone: 'CHASSIS_UNDERSIDE',
        partTypeId: await capacitor('filter 20/450', '20', '450'),
      },
      {
        designator: '=C11',
        zone: 'CHASSIS_UNDERSIDE',
        partTypeId: await capacitor('paper .05/600', '0.05', '600'),
      },
      {
        designator: 'C12',
        zone: 'CHASSIS_UNDERSIDE',
        partTypeId: await part('CAPACITOR', 'trimmer'),
      },
      { designator: 'bottom cover', zone: 'CABINET' },
    ];
    model = (
      await done(
        api,
        'createModel',
        { itemKind: 'RIG', maker: 'Vessnor', designation: 'Duskferry 80' },
        'model { id }',
      )
    ).id;
    await done(api, 'addFitOutPositions', { modelId: model, positions }, 'model { id }');
    const createRig = async (inventoryNumber: string) =>
      (await done(api, 'createRig', { inventoryNumber, modelId: model }, 'rig { id }')).id;
    rig = await createRig('P-1');
    other = await createRig('P-2');
  });
  afterAll(() => api.close());

  const asked = (fields: string) =>
    api.ask(`query ($id: ID!) { node(id: $id) { ... on Rig { ${fields} } } }`, { id: rig });

  it('groups its capacitors into an order of values that are made', async () => {
    const { node } = await asked(`replacementList(series: E6, spares: 2) {
      lines { microfarads workingVoltsAtLeast designators quantity spares alternatives originals { microfarads differencePercent } }
      unknown csv basis { counted { what count } } }`);
    const { lines, unknown, basis } = node.replacementList;
    expect(
      lines.map((line: any) => [line.microfarads, line.workingVoltsAtLeast, line.designators]),
    ).toEqual([
      ['0.047', 400, ['C1', 'C2']],
      ['0.047', 600, ['=C11']],
      ['22', 450, ['C10']],
    ]);
    expect(lines[0].originals).toEqual([
      { microfarads: 0.05, differencePercent: expect.closeTo(-6, 6) },
    ]);
    expect(unknown).toEqual(['C12']);
    expect(basis.counted[0]).toEqual({ what: 'capacitors in the order', count: 4 });
  });

  it('gives the order as CSV by RFC 4180 that no spreadsheet runs', async () => {
    const { node } = await asked('replacementList(spares: 1) { csv }');
    const { csv } = node.replacementList;
    expect(csv.endsWith('\r\n')).toBe(true);
    const rows: string[][] = parse(csv);
    expect(rows).toHaveLength(4);
    expect(rows[2]).toEqual([
      'P-1',
      "'=C11",
      '0.047',
      '600',
      '1',
      '1',
      '2',
      '0.05',
      '0',
      '',
      '',
      '',
    ]);
    for (const cell of rows.flat()) expect(cell).not.toMatch(/^[=+\-@]/);
  });

  it('refuses more spares than anybody orders', async () => {
    const { errors } = await api.tryToAsk(
      `query ($id: ID!) { node(id: $id) { ... on Rig { replacementList(spares: 1000) { csv } } } }`,
      { id: rig },
    );
    expect(errors?.[0]?.message).toBe('Ask for 0 to 100 spares.');
  });

  it('prices what is missing and names the sets that could give it up', async () => {
    await done(
      api,
      'recordInspection',
      {
        itemId: rig,
        inspectedAt: '2026-03-01T10:00:00Z',
        fitOutChecks: [
          { designator: 'V1', state: 'MISSING' },
          { designator: 'bottom cover', state: 'MISSING' },
          { designator: 'C1', state: 'PRESENT' },
        ],
      },
      'inspection { id }',
    );
    const fitted = { itemId: other, designator: 'V1', component: { partTypeId: tube } };
    await done(api, 'fitComponent', fitted, 'fitting { id }');
    for (const amount of ['4.00', '6.00']) {
      const price = { kind: 'ASKED', notedOn: '2026-05-01', seenAt: 'fair', partTypeId: tube };
      await done(
        api,
        'notePrice',
        { ...price, amount: { amount, currency: 'EUR' } },
        'priceNote { id }',
      );
    }
    const { node } = await asked(`
      missingParts { isWronglyFilled position { designator zone } partType { designation }
        price { median { amount } recentCount newestAgeDays }
        donors { designator isPartsDonor item { inventoryNumber } } }
      missingPartsCost { totals { amount currency } unpricedCount basis { counted { what count } } }`);
    expect(node.missingParts).toEqual([
      {
        isWronglyFilled: false,
        position: { designator: 'V1', zone: 'CHASSIS_TOP' },
        partType: { designation: '6BA6' },
        price: { median: { amount: '5.00' }, recentCount: 2, newestAgeDays: 31 },
        donors: [{ designator: 'V1', isPartsDonor: false, item: { inventoryNumber: 'P-2' } }],
      },
      {
        isWronglyFilled: false,
        position: { designator: 'bottom cover', zone: 'CABINET' },
        partType: null,
        price: null,
        donors: [],
      },
    ]);
    expect(node.missingPartsCost).toMatchObject({
      totals: [{ amount: '5.00', currency: 'EUR' }],
      unpricedCount: 1,
    });
  });

  it('counts a part that came out to the shelf as in stock', async () => {
    const { node } = await api.ask(
      `query ($id: ID!) { node(id: $id) { ... on Rig { components { nodes { component { id } } } } } }`,
      { id: other },
    );
    const componentId = node.components.nodes[0].component.id;
    await done(api, 'removeComponent', { componentId, disposition: 'STOCK' }, 'fitting { id }');
    const sharp = (
      await done(
        api,
        'createPartType',
        { kind: 'TUBE', designation: '6AU6', ratings: [] },
        'partType { id }',
      )
    ).id;
    const edge = { originalId: sharp, substituteId: tube, grade: 'WITH_CHANGES' };
    await done(api, 'recordSubstitution', edge, 'substitution { id }');
    const { node: answer } = await api.ask(
      `query ($id: ID!) { node(id: $id) { ... on PartType {
        substitutes { partType { designation } inStock grade } } } }`,
      { id: sharp },
    );
    expect(answer.substitutes).toEqual([
      { partType: { designation: '6BA6' }, inStock: 1, grade: 'WITH_CHANGES' },
    ]);
  });
});
