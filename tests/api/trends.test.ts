import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { benchStory, type BenchStory } from '../support/benchStory.js';
import { testApi, type TestApi } from '../support/testApi.js';

const trendFields = `quantity tier unit outcome instants missingInstants slopePerYear slopeLowPerYear
  slopeHighPerYear kendallS probability isLimitNear whyEarlierLeftOut
  limitReached { end limit central earliest latest } readings { value } basis { method counted { what count } }`;

describe.each(['sqlite', 'postgres'] as const)('trends and matched sets on %s', (engine) => {
  let api: TestApi;
  let story: BenchStory;
  beforeAll(async () => {
    api = await testApi(engine);
    story = await benchStory(api);
  });
  afterAll(() => api?.close());

  const fit = async (designator: string): Promise<string> => {
    const { fitComponent } = await api.ask(
      `mutation ($input: FitComponentInput!) { fitComponent(input: $input) {
        fitting { component { id } } problems { message } } }`,
      {
        input: {
          itemId: story.rig,
          designator,
          component: { partTypeId: story.tubeType },
          fittedAt: '2019-01-01T00:00:00Z',
        },
      },
    );
    return fitComponent.fitting.component.id;
  };
  const record = (
    subject: object,
    values: readonly string[],
    more: object = {},
    firstYear = 2020,
  ) =>
    api.ask(
      `mutation ($input: RecordReadingsInput!) { recordReadings(input: $input) { problems { message path } } }`,
      {
        input: {
          readings: values.map((value, index) => ({
            quantity: 'transconductance',
            unit: 'mS',
            tier: 'IN_CIRCUIT',
            instrument: 'bridge',
            ...subject,
            ...more,
            value,
            takenAt: `${firstYear + index}-03-01T00:00:00Z`,
          })),
        },
      },
    );
  const component = async (id: string) =>
    (
      await api.ask(
        `query ($id: ID!) { node(id: $id) { ... on Component { trends { ${trendFields} }
          state { state ground readings { value } } matchedSets { name mismatch { word percent } } } } }`,
        { id },
      )
    ).node;
  const compare = async (input: object) =>
    (
      await api.ask(
        `mutation ($input: CompareInstrumentsInput!) { compareInstruments(input: $input) {
          comparison { id version factor } problems { code message path } } }`,
        { input },
      )
    ).compareInstruments;

  it('says how many readings are missing, then how fast it falls and when it reaches the limit', async () => {
    const id = await fit('V1');
    await record({ componentId: id }, ['6', '5.9', '5.7']);
    const few = await component(id);
    expect(few.trends).toMatchObject([
      {
        outcome: 'TOO_FEW',
        instants: 3,
        missingInstants: 2,
        slopePerYear: null,
        probability: null,
      },
    ]);
    expect(few.trends[0].basis.method).toContain('needs 5 readings');
    await record({ componentId: id }, ['5500', '5400'], { unit: 'uS' }, 2023);
    const { trends, state } = await component(id);
    expect(trends).toMatchObject([
      { outcome: 'FALLING', unit: 'mS', instants: 5, kendallS: -10, isLimitNear: false },
    ]);
    expect(trends[0].slopePerYear).toBeCloseTo(-0.16, 1);
    expect(trends[0].probability).toBeCloseTo(2 / 120, 6);
    expect(trends[0].limitReached).toMatchObject({ end: 'LOWER', limit: '4.2' });
    const { earliest, central, latest } = trends[0].limitReached;
    expect(earliest < central && central < latest).toBe(true);
    expect(state).toMatchObject({ state: 'PROVEN_IN_CIRCUIT', ground: 'WITHIN_LIMITS' });
  });

  it('makes a tube suspect that reaches its limit within a year', async () => {
    const id = await fit('V2');
    await record({ componentId: id }, ['6', '5.6', '5.2', '4.8', '4.4']);
    const { state, trends } = await component(id);
    expect(trends[0].isLimitNear).toBe(true);
    expect(state).toMatchObject({ state: 'SUSPECT', ground: 'TREND' });
    expect(state.readings).toHaveLength(5);
  });

  it('breaks the series where the instrument changes, until a comparison is given', async () => {
    const id = await fit('V3');
    await record({ componentId: id }, ['6', '5.9', '5.8'], { instrument: 'old tester' });
    await record({ componentId: id }, ['5', '4.9', '4.8'], { instrument: 'new tester' }, 2023);
    const broken = (await component(id)).trends[0];
    expect(broken).toMatchObject({ outcome: 'TOO_FEW', instants: 3 });
    expect(broken.whyEarlierLeftOut).toContain('old tester');
    const refused = await compare({
      quantity: 'Transconductance',
      fromInstrument: 'Old Tester',
      toInstrument: 'old tester',
      factor: '0',
      comparedOn: '2030-01-01',
    });
    expect(refused.problems.map(({ path }: any) => path[0])).toEqual([
      'toInstrument',
      'factor',
      'comparedOn',
    ]);
    const { problems } = await compare({
      quantity: 'Transconductance',
      fromInstrument: 'Old tester',
      toInstrument: 'new tester',
      factor: '0.9',
      comparedOn: '2023-02-01',
    });
    expect(problems).toEqual([]);
    const joined = (await component(id)).trends[0];
    expect(joined).toMatchObject({ outcome: 'FALLING', instants: 6, whyEarlierLeftOut: null });
    expect(joined.basis.counted).toContainEqual({
      what: 'readings converted by a comparison factor',
      count: 3,
    });
  });

  it('follows the output of a whole set', async () => {
    const output = { itemId: story.rig, quantity: 'output power', unit: 'W' };
    await record(output, ['100', '101', '99', '100.5', '99.5', '100.2']);
    const { node } = await api.ask(
      `query ($id: ID!) { node(id: $id) { ... on Rig { trends { ${trendFields} } } } }`,
      { id: story.rig },
    );
    expect(node.trends).toMatchObject([
      { quantity: 'output power', outcome: 'NONE', instants: 6, limitReached: null },
    ]);
  });

  it('tells whether a pair matches, by readings of one kind', async () => {
    const pair = [await fit('V4'), await fit('V5')];
    const create = async (input: object) =>
      (
        await api.ask(
          `mutation ($input: CreateMatchedSetInput!) { createMatchedSet(input: $input) {
            matchedSet { id version mismatch { word percent basis { method } } components { id } }
            problems { code message path } } }`,
          { input },
        )
      ).createMatchedSet;
    const wrong = await create({
      name: 'finals',
      quantity: 'plate current',
      tier: 'TESTER',
      largestMismatchPercent: '0',
      componentIds: [pair[0], pair[0]],
    });
    expect(wrong.problems.map(({ path }: any) => path[0])).toEqual([
      'largestMismatchPercent',
      'componentIds',
    ]);
    const { matchedSet } = await create({
      name: 'finals',
      quantity: 'plate current',
      tier: 'TESTER',
      largestMismatchPercent: '10',
      source: 'common practice, no source',
      componentIds: pair,
    });
    expect(matchedSet.mismatch).toMatchObject({ word: 'UNKNOWN', percent: null });
    const current = { quantity: 'Plate current', unit: 'mA', tier: 'TESTER' };
    await record({ componentId: pair[0] }, ['100'], current, 2024);
    await record({ componentId: pair[1] }, ['92'], { ...current, instrument: 'other' }, 2023);
    expect((await component(pair[0]!)).matchedSets[0].mismatch.word).toBe('UNKNOWN');
    await record({ componentId: pair[1] }, ['92000'], { ...current, unit: 'uA' }, 2024);
    const { word, percent } = (await component(pair[1]!)).matchedSets[0].mismatch;
    expect(word).toBe('MATCHED');
    expect(percent).toBeCloseTo((8 / 96) * 100, 9);
    const changed = await api.ask(
      `mutation ($input: ChangeMatchedSetInput!) { changeMatchedSet(input: $input) {
        matchedSet { mismatch { word } } problems { message } } }`,
      { input: { id: matchedSet.id, version: 1, largestMismatchPercent: '5' } },
    );
    expect(changed.changeMatchedSet.matchedSet.mismatch.word).toBe('MISMATCHED');
  });
});
