import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { benchStory, type BenchStory } from '../support/benchStory.js';
import { testApi, type TestApi } from '../support/testApi.js';

describe.each(['sqlite', 'postgres'] as const)('templates of sweeps on %s', (engine) => {
  let api: TestApi;
  let story: BenchStory;
  let modelId: string;
  beforeAll(async () => {
    api = await testApi(engine);
    story = await benchStory(api);
    const { node } = await api.ask(
      'query ($id: ID!) { node(id: $id) { ... on Rig { model { id } } } }',
      { id: story.rig },
    );
    modelId = node.model.id;
  });
  afterAll(() => api?.close());

  const fields = `id version name tier instrument method note retiredAt designators
    quantities { quantity unit } model { designation }`;
  const save = async (input: Record<string, unknown>) =>
    (
      await api.ask(
        `mutation ($input: SaveSweepTemplateInput!) { saveSweepTemplate(input: $input) {
          sweepTemplate { ${fields} } problems { code message path } } }`,
        { input: { modelId, ...input } },
      )
    ).saveSweepTemplate;
  const change = async (input: Record<string, unknown>) =>
    (
      await api.ask(
        `mutation ($input: ChangeSweepTemplateInput!) { changeSweepTemplate(input: $input) {
          sweepTemplate { ${fields} } problems { code message path } } }`,
        { input },
      )
    ).changeSweepTemplate;
  const sweep = async (input: Record<string, unknown>) =>
    (
      await api.ask(
        `mutation ($input: RecordSweepInput!) { recordSweep(input: $input) {
          sweep { id template { name } positionsLeft readingCount rows { designator readings {
            quantity unit tier instrument method value } } } problems { code message path } } }`,
        { input: { itemId: story.rig, fitsExpected: true, ...input } },
      )
    ).recordSweep;
  const offered = async (): Promise<string[]> => {
    const { node } = await api.ask(
      'query ($id: ID!) { node(id: $id) { ... on Rig { model { sweepTemplates { name } } } } }',
      { id: story.rig },
    );
    return node.model.sweepTemplates.map(({ name }: { name: string }) => name);
  };
  const yearly = {
    name: 'Yearly tube check',
    designators: ['v1', 'V2', 'V3'],
    quantities: [
      { quantity: 'transconductance', unit: 'uS' },
      { quantity: 'gas current', unit: 'uA' },
    ],
    tier: 'TESTER',
    instrument: 'bench tester',
    method: 'after ten minutes',
  };

  it('keeps positions, quantities, instrument and method under a name; a sweep takes them from there', async () => {
    const { sweepTemplate, problems } = await save(yearly);
    expect(problems).toEqual([]);
    expect(sweepTemplate).toMatchObject({
      ...yearly,
      designators: ['V1', 'V2', 'V3'],
      model: { designation: 'L-200' },
      retiredAt: null,
    });
    expect(await offered()).toEqual(['Yearly tube check']);

    const taken = await sweep({
      key: 'with template',
      templateId: sweepTemplate.id,
      rows: [
        { designator: 'V1', values: ['5100', '0.2'] },
        { designator: 'V3', values: ['4900', null] },
      ],
    });
    expect(taken.problems).toEqual([]);
    expect(taken.sweep).toMatchObject({
      template: { name: 'Yearly tube check' },
      positionsLeft: ['V2'],
      readingCount: 3,
    });
    expect(taken.sweep.rows[0].readings).toMatchObject([
      {
        quantity: 'transconductance',
        unit: 'uS',
        tier: 'TESTER',
        instrument: 'bench tester',
        method: 'after ten minutes',
      },
      { quantity: 'gas current', value: '0.2' },
    ]);
    // What the sweep says itself goes before its template.
    const other = await sweep({
      key: 'own instrument',
      templateId: sweepTemplate.id,
      instrument: 'borrowed tester',
      quantities: [{ quantity: 'gas current', unit: 'uA' }],
      rows: [{ designator: 'V2', values: ['0.1'] }],
    });
    expect(other.sweep.rows[0].readings).toMatchObject([
      { quantity: 'gas current', instrument: 'borrowed tester', method: 'after ten minutes' },
    ]);
  });

  it('changes and retires one; the sweeps taken with it keep what it named then', async () => {
    const { sweepTemplate } = await save({ ...yearly, name: 'Quick look' });
    const { id, version } = sweepTemplate;
    const taken = await sweep({
      key: 'quick',
      templateId: id,
      rows: [{ designator: 'V1', values: ['5000', '0.1'] }],
    });
    const changed = await change({
      id,
      version,
      designators: ['V1'],
      instrument: null,
      isRetired: true,
    });
    expect(changed.sweepTemplate).toMatchObject({ designators: ['V1'], instrument: null });
    expect(changed.sweepTemplate.retiredAt).not.toBeNull();
    expect(await offered()).not.toContain('Quick look');
    const stale = await change({ id, version, name: 'Too late' });
    expect(stale.problems).toMatchObject([{ code: 'OUT_OF_DATE' }]);
    const { node } = await api.ask(
      'query ($id: ID!) { node(id: $id) { ... on Sweep { positionsLeft template { name } } } }',
      { id: taken.sweep.id },
    );
    expect(node).toEqual({ positionsLeft: ['V2', 'V3'], template: { name: 'Quick look' } });
  });

  it('names everything that is wrong with a template, and keeps a name once', async () => {
    const wrong = await save({
      name: ' ',
      designators: ['V1', 'V77', 'v1'],
      quantities: [{ quantity: 'transconductance', unit: 'mhos' }],
      tier: 'TESTER',
    });
    expect(wrong.sweepTemplate).toBeNull();
    expect(wrong.problems.map(({ path }: any) => path.join('.'))).toEqual([
      'name',
      'designators.1',
      'designators.2',
      'quantities.0.unit',
    ]);
    expect(
      (await save({ ...yearly, name: 'none', designators: [], quantities: [] })).problems,
    ).toHaveLength(2);
    const taken = await Promise.all([
      save({ ...yearly, name: 'Same  name' }),
      save({ ...yearly, name: 'same name' }),
    ]);
    expect(taken.filter(({ sweepTemplate }) => sweepTemplate)).toHaveLength(1);
    expect(taken.flatMap(({ problems }) => problems)).toMatchObject([
      { code: 'CONFLICT', path: ['name'] },
    ]);
  });

  it('refuses a template of another model, and a sweep that says neither quantities nor a template', async () => {
    const { sweepTemplate } = await save({ ...yearly, name: 'For this model' });
    const rows = [{ designator: 'V1', values: ['5000', '0.1'] }];
    const foreign = await sweep({
      key: 'foreign',
      itemId: story.unknownRig,
      templateId: sweepTemplate.id,
      rows,
    });
    expect(foreign.problems).toMatchObject([{ code: 'CONFLICT', path: ['templateId'] }]);
    const bare = await sweep({ key: 'bare', rows });
    expect(bare.problems.map(({ path }: any) => path[0])).toEqual(['quantities', 'tier']);
  });
});
