import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { benchStory, type BenchStory } from '../support/benchStory.js';
import { testApi, type TestApi } from '../support/testApi.js';

describe.each(['sqlite', 'postgres'] as const)('readings on %s', (engine) => {
  let api: TestApi;
  let story: BenchStory;
  beforeAll(async () => {
    api = await testApi(engine);
    story = await benchStory(api);
  });
  afterAll(() => api.close());

  const record = async (readings: Record<string, unknown>[]) =>
    (
      await api.ask(
        `mutation ($input: RecordReadingsInput!) { recordReadings(input: $input) {
          readings { id version quantity value unit takenAt takenBy { name } item { inventoryNumber }
            component { marking state { state readings { value tier } } }
            verdict { word limitsApplied limit { value unit lower upper source } } }
          problems { code message path } } }`,
        { input: { readings } },
      )
    ).recordReadings;
  let places = 0;
  const newTube = async (): Promise<string> =>
    (
      await api.ask(
        `mutation ($input: FitComponentInput!) { fitComponent(input: $input) { fitting { component { id } } } }`,
        {
          input: {
            itemId: story.unknownRig,
            designator: `T${++places}`,
            component: { partTypeId: story.tubeType, marking: 'tube' },
          },
        },
      )
    ).fitComponent.fitting.component.id;
  const stateOf = async (id: string) =>
    (
      await api.ask(
        `query ($id: ID!) { node(id: $id) { ... on Component { state { state readings { value } } } } }`,
        { id },
      )
    ).node.state;
  const reading = (componentId: string, value: string, more: Record<string, unknown> = {}) => ({
    componentId,
    quantity: 'Transconductance',
    value,
    unit: 'mS',
    tier: 'TESTER',
    takenAt: '2026-05-01T10:00:00Z',
    ...more,
  });

  it('a tube that passed on a tester is not yet proven', async () => {
    const id = await newTube();
    expect(await stateOf(id)).toEqual({ state: 'UNTESTED', readings: [] });
    await record([reading(id, '6.8')]);
    expect((await stateOf(id)).state).toBe('PASSED_ON_TESTER');
    await record([reading(id, '6.5', { tier: 'IN_CIRCUIT', takenAt: '2026-05-02T10:00:00Z' })]);
    expect(await stateOf(id)).toEqual({
      state: 'PROVEN_IN_CIRCUIT',
      readings: [{ value: '6.5' }],
    });
  });

  it('a tube that a tester rejects is rejected, and suspect once the circuit contradicts', async () => {
    const id = await newTube();
    await record([reading(id, '4.1999')]);
    expect((await stateOf(id)).state).toBe('REJECTED');
    await record([reading(id, '4.2', { tier: 'IN_CIRCUIT', takenAt: '2026-05-02T10:00:00Z' })]);
    expect((await stateOf(id)).state).toBe('SUSPECT');
  });

  it("holds a reading against its part type's limit in the limit's unit, and names the source", async () => {
    const id = await newTube();
    const { readings } = await record([
      reading(id, '4150', { unit: 'uS', takenById: story.person, instrument: 'bridge' }),
      reading(id, '4200', { unit: 'uS' }),
      reading(id, '0.5', { quantity: 'grid current', unit: 'uA' }),
    ]);
    expect(readings.map((one: any) => one.verdict)).toEqual([
      {
        word: 'BELOW_LIMIT',
        limitsApplied: 1,
        limit: {
          value: '4.15',
          unit: 'mS',
          lower: '4.2',
          upper: null,
          source: "the collector's own rule",
        },
      },
      expect.objectContaining({ word: 'WITHIN_LIMITS' }),
      { word: 'NO_LIMIT', limitsApplied: 0, limit: null },
    ]);
    expect(readings[0]).toMatchObject({ value: '4150', takenBy: { name: 'Bench hand' } });
  });

  it("holds a reading on a set against its model's limit, only where that limit applies", async () => {
    const power = (value: string, tier: string, unit = 'W') => ({
      itemId: story.rig,
      quantity: 'output power',
      value,
      unit,
      tier,
    });
    const { readings } = await record([
      power('0.121', 'IN_CIRCUIT', 'kW'),
      power('80', 'IN_CIRCUIT'),
      power('10', 'TESTER'),
    ]);
    expect(readings.map((one: any) => one.verdict.word)).toEqual([
      'ABOVE_LIMIT',
      'WITHIN_LIMITS',
      'NO_LIMIT',
    ]);
    expect(readings[0].verdict.limit).toMatchObject({ value: '121', lower: '80', upper: '120' });
    const { node } = await api.ask(
      `query ($id: ID!) { node(id: $id) { ... on Rig { readings(first: 2) { totalCount nodes { value } } } } }`,
      { id: story.rig },
    );
    expect(node.readings.totalCount).toBe(3);
  });

  it('keeps none of the readings when one is wrong, and tells of every fault', async () => {
    const id = await newTube();
    const { readings, problems } = await record([
      reading(id, '6'),
      reading(id, '6', { unit: 'kOhm' }),
      reading(id, '6', { unit: 'furlongs!' }),
      reading(id, '6', { takenAt: '2026-06-01T12:02:00Z' }),
      reading(id, '6', { itemId: story.rig }),
      reading('Component_00000000-0000-7000-8000-000000000000', '6'),
      reading(story.rig, '6'),
    ]);
    expect(readings).toBeNull();
    expect(problems.map((problem: any) => problem.path.join('.')).sort()).toEqual([
      'readings.1.unit',
      'readings.2.unit',
      'readings.3.takenAt',
      'readings.4',
      'readings.5.componentId',
      'readings.6.componentId',
    ]);
    expect(problems.find((problem: any) => problem.path[1] === '1').message).toBe(
      'The limit for Transconductance is in mS; kOhm measures something else. Give the reading in mS or a multiple of it.',
    );
    expect((await stateOf(id)).state).toBe('UNTESTED');
    expect((await record([])).problems[0].path).toEqual(['readings']);
  });

  it('takes two hundred readings at a time and no more', async () => {
    const id = await newTube();
    const many = Array.from({ length: 201 }, (_, index) => reading(id, `${5 + index / 100}`));
    expect((await record(many)).problems[0].message).toContain('these are 201');
    expect((await record(many.slice(1))).readings).toHaveLength(200);
  });

  it('corrects a reading that was written down wrongly; the history keeps the old one', async () => {
    const id = await newTube();
    const wrong = (await record([reading(id, '0.68')])).readings[0];
    const { changeReading } = await api.ask(
      `mutation ($input: ChangeReadingInput!) { changeReading(input: $input) {
        reading { version value verdict { word } } problems { message } } }`,
      { input: { id: wrong.id, version: 1, value: '6.8' } },
    );
    expect(changeReading.reading).toEqual({
      version: 2,
      value: '6.8',
      verdict: { word: 'WITHIN_LIMITS' },
    });
    const history = await api.database.reader.rows<{ before: string; action: string }>(
      `SELECT before AS "before", action AS "action" FROM change WHERE record_id = ? ORDER BY id`,
      [wrong.id.slice('Reading_'.length)],
    );
    expect(history.map((row) => row.action)).toEqual(['recordReadings', 'changeReading']);
    expect(JSON.stringify(history[1]?.before)).toContain('0.68');
  });

  it('costs the same number of statements for many components as for one', async () => {
    const query = `query ($id: ID!, $first: Int!) { node(id: $id) { ... on Rig {
      components(first: $first) { nodes { component { state { state readings { verdict { word } } }
        readings(first: 3) { nodes { value verdict { word limit { source } } } } partType { designation } } } } } } }`;
    const counted = async (first: number) => {
      const before = api.statements();
      const { node } = await api.ask(query, { id: story.unknownRig, first });
      expect(node.components.nodes).toHaveLength(first);
      return api.statements() - before;
    };
    const one = await counted(1);
    expect(await counted(5)).toBe(one);
  });
});
