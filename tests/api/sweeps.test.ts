import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { benchStory, type BenchStory } from '../support/benchStory.js';
import { testApi, type TestApi } from '../support/testApi.js';

describe.each(['sqlite', 'postgres'] as const)('a sweep of readings on %s', (engine) => {
  let api: TestApi;
  let story: BenchStory;
  beforeAll(async () => {
    api = await testApi(engine);
    story = await benchStory(api);
  });
  afterAll(() => api?.close());

  const sweepOf = async (input: Record<string, unknown>) =>
    (
      await api.ask(
        `mutation ($input: RecordSweepInput!) { recordSweep(input: $input) {
          sweep { id key readingCount refusedRowCount item { id } rows { designator problems { code message path }
            component { id partType { designation } state { state } }
            readings { quantity value unit note verdict { word } } } }
          problems { code message path } } }`,
        { input },
      )
    ).recordSweep;
  const readingsOfRig = async (designator: string) => {
    const { node } = await api.ask(
      `query ($id: ID!) { node(id: $id) { ... on Rig { components { nodes { designator
        component { readings { totalCount } } } } } } }`,
      { id: story.rig },
    );
    const found = node.components.nodes.find((one: any) => one.designator === designator);
    return found?.component.readings.totalCount ?? 0;
  };
  const template = {
    quantities: [
      { quantity: 'transconductance', unit: 'uS' },
      { quantity: 'gas current', unit: 'uA' },
    ],
    tier: 'TESTER',
    instrument: 'bench tester',
    fitsExpected: true,
  };

  it('takes twenty readings in one call, names the row it cannot keep, and keeps the others', async () => {
    const rows = [
      { designator: 'v1', values: ['5100', '0.2'] },
      { designator: 'V2', values: ['3900', null], note: 'slow to warm up' },
      { designator: 'V3', values: ['4800', '0.1'] },
      { designator: 'C12', values: ['1', '1'] },
      { designator: 'V3', values: ['4700', '0.1'] },
      { designator: 'bottom cover', values: ['5000'] },
    ];
    const sent = { ...template, key: 'evening one', itemId: story.rig, rows };
    const { sweep, problems } = await sweepOf(sent);
    expect(problems).toEqual([]);
    expect(sweep).toMatchObject({ readingCount: 5, refusedRowCount: 3 });
    expect(sweep.rows[0]).toMatchObject({
      designator: 'V1',
      component: { partType: { designation: '6146B' }, state: { state: 'PASSED_ON_TESTER' } },
      readings: [{ value: '5100', verdict: { word: 'WITHIN_LIMITS' } }, { value: '0.2' }],
      problems: [],
    });
    expect(sweep.rows[1]).toMatchObject({
      component: { state: { state: 'REJECTED' } },
      readings: [{ value: '3900', note: 'slow to warm up', verdict: { word: 'BELOW_LIMIT' } }],
    });
    expect(sweep.rows[3].problems).toMatchObject([
      { code: 'NOT_FOUND', path: ['rows', '3', 'designator'] },
    ]);
    expect(sweep.rows[4].problems[0].message).toContain('V3 is in this sweep already');
    expect(sweep.rows[5].problems[0].path).toEqual(['rows', '5', 'values']);
    expect(await readingsOfRig('V1')).toBe(2);

    const again = await sweepOf(sent);
    expect(again.sweep.id).toBe(sweep.id);
    expect(await readingsOfRig('V1')).toBe(2);
    const other = await sweepOf({ ...sent, rows: rows.slice(1) });
    expect(other.problems).toMatchObject([{ code: 'CONFLICT', path: ['key'] }]);
    expect(other.problems[0].message).toContain('evening one');
  });

  it('keeps a sweep once that is sent ten times at once', async () => {
    const before = await readingsOfRig('V1');
    const sent = {
      ...template,
      key: 'impatient',
      itemId: story.rig,
      rows: [{ designator: 'V1', values: ['5090', '0.3'] }],
    };
    const answers = await Promise.all(Array.from({ length: 10 }, () => sweepOf(sent)));
    expect(new Set(answers.map(({ sweep }) => sweep.id)).size).toBe(1);
    expect(await readingsOfRig('V1')).toBe(before + 2);
  });

  it('refuses a unit it does not know, one of the wrong dimension, and a reading in the future', async () => {
    const rows = [{ designator: 'V1', values: ['5'] }];
    const sent = { ...template, key: 'wrong', itemId: story.rig, rows };
    const unknown = await sweepOf({
      ...sent,
      quantities: [{ quantity: 'transconductance', unit: 'mhos' }],
      takenAt: '2027-01-01T00:00:00Z',
    });
    expect(unknown.problems.map(({ path }: any) => path.join('.'))).toEqual([
      'takenAt',
      'quantities.0.unit',
    ]);
    const foreign = await sweepOf({
      ...sent,
      quantities: [{ quantity: 'transconductance', unit: 'V' }],
    });
    expect(foreign.sweep).toBeNull();
    expect(foreign.problems).toMatchObject([{ path: ['rows', '0', 'values', '0', 'unit'] }]);
    const mended = await sweepOf({
      ...sent,
      quantities: [{ quantity: 'transconductance', unit: 'mS' }],
    });
    expect(mended.sweep.readingCount).toBe(1);
  });

  it('reads what sat there then, and takes twenty tubes at once', async () => {
    const designators = Array.from({ length: 20 }, (_, index) => `T${index + 1}`);
    for (const designator of designators) {
      await api.ask(
        `mutation ($input: FitComponentInput!) { fitComponent(input: $input) { problems { message } } }`,
        {
          input: {
            itemId: story.unknownRig,
            designator,
            component: { partTypeId: story.tubeType },
            fittedAt: '2026-01-10T00:00:00Z',
          },
        },
      );
    }
    const sent = {
      ...template,
      itemId: story.unknownRig,
      fitsExpected: false,
      rows: designators.map((designator, index) => ({
        designator,
        values: [String(4000 + index * 50), '0'],
      })),
    };
    const early = await sweepOf({ ...sent, key: 'early', takenAt: '2025-12-31T00:00:00Z' });
    expect(early.problems).toHaveLength(20);
    expect(early.problems[0].message).toContain('Nothing is recorded as sitting in T1 of R-003');
    const { sweep } = await sweepOf({ ...sent, key: 'twenty' });
    expect(sweep).toMatchObject({ readingCount: 40, refusedRowCount: 0 });
  });
});
