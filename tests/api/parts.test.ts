import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { benchStory, type BenchStory } from '../support/benchStory.js';
import { testApi, type TestApi } from '../support/testApi.js';

describe.each(['sqlite', 'postgres'] as const)('parts in and out on %s', (engine) => {
  let api: TestApi;
  let story: BenchStory;
  beforeAll(async () => {
    api = await testApi(engine);
    story = await benchStory(api);
  });
  afterAll(() => api.close());

  const fit = async (input: Record<string, unknown>) =>
    (
      await api.ask(
        `mutation ($input: FitComponentInput!) { fitComponent(input: $input) {
          fitting { id version designator fittedAt removedAt disposition
            position { designator } item { inventoryNumber } component { id marking partType { designation } } }
          problems { code message path } } }`,
        { input },
      )
    ).fitComponent;
  const remove = async (input: Record<string, unknown>) =>
    (
      await api.ask(
        `mutation ($input: RemoveComponentInput!) { removeComponent(input: $input) {
          fitting { id removedAt disposition note component { id } } problems { code message path } } }`,
        { input },
      )
    ).removeComponent;
  const sitting = async (id: string, asOf?: string) =>
    (
      await api.ask(
        `query ($id: ID!, $asOf: DateTimeISO) { node(id: $id) { ... on Rig {
          components(asOf: $asOf) { nodes { designator component { marking } } } } } }`,
        { id, ...(asOf && { asOf }) },
      )
    ).node.components.nodes.map((one: any) => `${one.designator} ${one.component.marking}`);
  const tube = (marking: string) => ({ partTypeId: story.tubeType, marking });

  it('tells what was in V3 in spring', async () => {
    const old = await fit({
      itemId: story.rig,
      designator: 'v3',
      component: { ...tube('old'), origin: 'ORIGINAL' },
      fittedAt: '2025-01-10T12:00:00Z',
      note: 'found there',
    });
    expect(old.problems).toEqual([]);
    expect(old.fitting.position.designator).toBe('V3');
    expect(old.fitting.component.partType.designation).toBe('6146B');
    const fresh = await fit({
      itemId: story.rig,
      designator: 'V3',
      component: tube('fresh'),
      fittedAt: '2026-05-20T12:00:00Z',
      removing: { disposition: 'KEPT', note: 'low emission' },
    });
    expect(fresh.problems).toEqual([]);
    expect(await sitting(story.rig)).toEqual(['V3 fresh']);
    expect(await sitting(story.rig, '2026-04-01T00:00:00Z')).toEqual(['V3 old']);
    expect(await sitting(story.rig, '2026-05-20T12:00:00Z')).toEqual(['V3 fresh']);
    expect(await sitting(story.rig, '2024-04-01T00:00:00Z')).toEqual([]);
    const { node } = await api.ask(
      `query ($id: ID!) { node(id: $id) { ... on Component { origin fittings { designator removedAt disposition note } } } }`,
      { id: old.fitting.component.id },
    );
    expect(node.origin).toBe('ORIGINAL');
    expect(node.fittings).toEqual([
      {
        designator: 'V3',
        removedAt: '2026-05-20T12:00:00.000Z',
        disposition: 'KEPT',
        note: 'found there\nlow emission',
      },
    ]);
  });

  it('learns later what sat there before, between two known parts', async () => {
    const between = {
      itemId: story.rig,
      designator: 'V3',
      component: tube('earlier'),
      fittedAt: '2020-01-01T00:00:00Z',
    };
    const clash = await fit(between);
    expect(clash.problems).toHaveLength(2);
    expect(clash.problems[0].message).toContain('V3 of R-001 would hold The new part (since 2020');
    const past = await fit({
      ...between,
      removedAt: '2024-12-31T00:00:00Z',
      disposition: 'BINNED',
    });
    expect(past.fitting.disposition).toBe('BINNED');
    expect(await sitting(story.rig, '2022-01-01T00:00:00Z')).toEqual(['V3 earlier']);
  });

  it('refuses two parts in one place, and one part in two places', async () => {
    const first = await fit({ itemId: story.rig, designator: 'V1', component: tube('a') });
    const second = await fit({ itemId: story.rig, designator: 'V1', component: tube('b') });
    expect(second.problems).toMatchObject([{ code: 'CONFLICT', path: ['designator'] }]);
    expect(second.problems[0].message).toContain('remove the first one before');
    const twice = await fit({
      itemId: story.otherRig,
      designator: 'V1',
      componentId: first.fitting.component.id,
    });
    expect(twice.problems).toMatchObject([{ code: 'CONFLICT', path: ['componentId'] }]);
    expect(twice.problems[0].message).toContain('V1 of R-001');
    await remove({ componentId: first.fitting.component.id, disposition: 'MOVED' });
    const moved = await fit({
      itemId: story.otherRig,
      designator: 'V1',
      componentId: first.fitting.component.id,
    });
    expect(moved.fitting.item.inventoryNumber).toBe('R-002');
  });

  it('refuses a removal before the fitting, and of what sits nowhere', async () => {
    const { fitting } = await fit({
      itemId: story.rig,
      designator: 'C12',
      component: { marking: '16 µF 450 V' },
      fittedAt: '2026-02-01T00:00:00Z',
    });
    const componentId = fitting.component.id;
    const early = await remove({
      componentId,
      removedAt: '2026-01-01T00:00:00Z',
      disposition: 'BINNED',
    });
    expect(early.problems).toMatchObject([{ code: 'CONFLICT', path: ['removedAt'] }]);
    expect(early.problems[0].message).toContain('16 µF 450 V was fitted in C12 of R-001');
    await remove({ componentId, removedAt: '2026-03-01T00:00:00Z', disposition: 'BINNED' });
    const again = await remove({ componentId, disposition: 'BINNED' });
    expect(again.problems[0].message).toBe(
      'This component sits nowhere: it came out of C12 at 2026-03-01T00:00:00.000Z.',
    );
    const { node } = await api.ask(
      `query ($id: ID!) { node(id: $id) { ... on Rig { fitOut { position { designator } state restsOn component { marking } } } } }`,
      { id: story.rig },
    );
    expect(node.fitOut.find((one: any) => one.position.designator === 'C12')).toMatchObject({
      state: 'MISSING',
      restsOn: 'REMOVAL',
      component: { marking: '16 µF 450 V' },
    });
  });

  it('wants to be told what a part is, and what is to be fitted', async () => {
    const nameless = await fit({ itemId: story.rig, designator: 'V2', component: {} });
    expect(nameless.problems[0].message).toBe('Say what it is: give its part type or its marking.');
    const nothing = await fit({
      itemId: story.rig,
      designator: ' ',
      fittedAt: '2030-01-01T00:00:00Z',
    });
    expect(nothing.problems.map((problem: any) => problem.path)).toEqual([
      ['designator'],
      ['fittedAt'],
      ['componentId'],
    ]);
    const empty = await fit({
      itemId: story.rig,
      designator: 'V2',
      component: tube('c'),
      removing: { disposition: 'KEPT' },
    });
    expect(empty.problems[0].message).toContain('Nothing is recorded as sitting in V2 of R-001');
  });

  it('lets one of two win who fit at the same time: one place, and one part', async () => {
    const inOnePlace = await Promise.all(
      ['x', 'y'].map((marking) =>
        fit({ itemId: story.otherRig, designator: 'V2', component: tube(marking) }),
      ),
    );
    expect(inOnePlace.filter((one) => one.fitting !== null)).toHaveLength(1);
    expect(inOnePlace.flatMap((one) => one.problems)).toMatchObject([{ code: 'CONFLICT' }]);
    const { fitting } = await fit({
      itemId: story.otherRig,
      designator: 'V3',
      component: tube('z'),
      fittedAt: '2026-01-01T00:00:00Z',
      removedAt: '2026-01-02T00:00:00Z',
    });
    const inTwoPlaces = await Promise.all(
      [story.rig, story.unknownRig].map((itemId) =>
        fit({ itemId, designator: 'V2', componentId: fitting.component.id }),
      ),
    );
    expect(inTwoPlaces.filter((one) => one.fitting !== null)).toHaveLength(1);
    expect(inTwoPlaces.flatMap((one) => one.problems)).toMatchObject([{ code: 'CONFLICT' }]);
  });

  it('corrects a fitting and a component, under the same rules', async () => {
    const change = async (input: Record<string, unknown>) =>
      (
        await api.ask(
          `mutation ($input: ChangeFittingInput!) { changeFitting(input: $input) {
            fitting { version designator fittedAt removedAt disposition } problems { code message path } } }`,
          { input },
        )
      ).changeFitting;
    const a = await fit({
      itemId: story.unknownRig,
      designator: 'L1',
      component: { marking: 'coil a' },
      fittedAt: '2026-01-01T00:00:00Z',
    });
    const b = await fit({
      itemId: story.unknownRig,
      designator: 'L2',
      component: { marking: 'coil b' },
      fittedAt: '2026-01-01T00:00:00Z',
    });
    expect(a.fitting.position).toBeNull();
    const clash = await change({ id: b.fitting.id, version: 1, designator: 'L1' });
    expect(clash.problems).toMatchObject([{ code: 'CONFLICT', path: ['designator'] }]);
    const mended = await change({
      id: b.fitting.id,
      version: 1,
      designator: 'L3',
      removedAt: '2026-02-01T00:00:00Z',
    });
    expect(mended.fitting).toMatchObject({ version: 2, designator: 'L3', disposition: 'UNKNOWN' });
    const late = await change({ id: b.fitting.id, version: 1, designator: 'L4' });
    expect(late.problems).toMatchObject([{ code: 'OUT_OF_DATE' }]);
    const { changeComponent } = await api.ask(
      `mutation ($input: ChangeComponentInput!) { changeComponent(input: $input) {
        component { version marking partType { designation } } problems { message path } } }`,
      {
        input: {
          id: a.fitting.component.id,
          version: 1,
          marking: null,
          partTypeId: story.tubeType,
        },
      },
    );
    expect(changeComponent.component).toEqual({
      version: 2,
      marking: null,
      partType: { designation: '6146B' },
    });
  });

  it('pages through what sits in a set', async () => {
    const page = async (after: string | null) =>
      (
        await api.ask(
          `query ($id: ID!, $after: String) { node(id: $id) { ... on Rig {
            components(first: 1, after: $after) { totalCount nodes { designator } pageInfo { hasNextPage endCursor } } } } }`,
          { id: story.otherRig, after },
        )
      ).node.components;
    const first = await page(null);
    const second = await page(first.pageInfo.endCursor);
    expect(first.totalCount).toBe(2);
    expect([first.nodes[0].designator, second.nodes[0].designator]).toEqual(['V1', 'V2']);
    expect(second.pageInfo.hasNextPage).toBe(false);
  });
});
