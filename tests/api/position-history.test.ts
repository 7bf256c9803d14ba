import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { seededRandom } from '../../src/domain/estimates/seededRandom.js';
import { benchStory, type BenchStory } from '../support/benchStory.js';
import { testApi, type TestApi } from '../support/testApi.js';

describe.each(['sqlite', 'postgres'] as const)('history by position on %s', (engine) => {
  let api: TestApi;
  let story: BenchStory;
  beforeAll(async () => {
    api = await testApi(engine);
    story = await benchStory(api);
  });
  afterAll(() => api?.close());

  const fit = async (input: object) =>
    (
      await api.ask(
        `mutation ($input: FitComponentInput!) { fitComponent(input: $input) {
          fitting { component { id } } problems { message } } }`,
        { input },
      )
    ).fitComponent;
  const rig = async (id: string, asOf?: string) =>
    (
      await api.ask(
        `query ($id: ID!, $asOf: DateTimeISO) { node(id: $id) { ... on Rig {
          components(asOf: $asOf, first: 100) { nodes { designator component { id } } }
          originality(asOf: $asOf) { byPosition { original replaced empty unknown low high }
            byWeight { original low high } basis { counted { what count } } }
          positionHistory { designator fittings { disposition next { designator item { inventoryNumber } }
            component { marking origin } } } } } }`,
        { id, ...(asOf && { asOf }) },
      )
    ).node;

  it('says what share is as it was made, then and now, and where each part went', async () => {
    await api.ask(
      `mutation ($input: ChangeFitOutPositionInput!) { changeFitOutPosition(input: $input) { problems { message } } }`,
      { input: { id: story.positionIds[4], version: 1, weight: 6 } },
    );
    const old = { partTypeId: story.tubeType, marking: 'old', origin: 'ORIGINAL' };
    const at = (day: string) => `${day}T12:00:00Z`;
    const { fitting } = await fit({
      itemId: story.rig,
      designator: 'V1',
      component: old,
      fittedAt: at('2020-01-01'),
    });
    const cover = { marking: 'cover', origin: 'ORIGINAL' };
    await fit({
      itemId: story.rig,
      designator: 'bottom cover',
      component: cover,
      fittedAt: at('2020-01-01'),
    });
    await fit({
      itemId: story.rig,
      designator: 'V1',
      component: { ...old, marking: 'new', origin: 'REPLACEMENT' },
      removing: { disposition: 'MOVED' },
      fittedAt: at('2024-01-01'),
    });
    await fit({
      itemId: story.otherRig,
      designator: 'V1',
      componentId: fitting.component.id,
      fittedAt: at('2024-02-01'),
    });
    const then = (await rig(story.rig, at('2022-01-01'))).originality;
    expect(then.byPosition).toMatchObject({ original: 2, unknown: 3, low: 0.4, high: 1 });
    const now = await rig(story.rig);
    expect(now.originality.byPosition).toMatchObject({ original: 1, replaced: 1, unknown: 3 });
    expect(now.originality.byPosition).toMatchObject({ low: 0.2, high: 0.8 });
    expect(now.originality.byWeight).toMatchObject({ original: 6, low: 0.6, high: 0.9 });
    const place = now.positionHistory.find(({ designator }: any) => designator === 'V1');
    expect(place.fittings).toMatchObject([
      {
        disposition: 'MOVED',
        component: { marking: 'old' },
        next: { designator: 'V1', item: { inventoryNumber: 'R-002' } },
      },
      { disposition: null, component: { marking: 'new' }, next: null },
    ]);
    const moved = (await rig(story.otherRig)).originality;
    expect(moved.byPosition).toMatchObject({ original: 0, replaced: 1 });
  });

  it('tells at any date what replaying the events up to it gives', async () => {
    const { nextUniform: random } = seededRandom('positions');
    const designators = ['V10', 'V11', 'V12'];
    const dayAt = (day: number) => new Date(Date.UTC(2021, 0, 1 + day)).toISOString();
    const sitting = new Map<string, string>();
    const snapshots: [number, Record<string, string>][] = [];
    for (let day = 1; day <= 25; day += 1) {
      const designator = designators[Math.floor(random() * designators.length)] ?? 'V10';
      const occupant = sitting.get(designator);
      if (occupant !== undefined && random() < 0.4) {
        await api.ask(
          `mutation ($input: RemoveComponentInput!) { removeComponent(input: $input) { problems { message } } }`,
          { input: { componentId: occupant, disposition: 'KEPT', removedAt: dayAt(day) } },
        );
        sitting.delete(designator);
      } else {
        const { fitting, problems } = await fit({
          itemId: story.unknownRig,
          designator,
          component: { partTypeId: story.tubeType },
          fittedAt: dayAt(day),
          ...(occupant !== undefined && { removing: { disposition: 'BINNED' } }),
        });
        expect(problems).toEqual([]);
        sitting.set(designator, fitting.component.id);
      }
      snapshots.push([day, Object.fromEntries(sitting)]);
    }
    for (const [day, expected] of snapshots) {
      for (const asOf of [dayAt(day), dayAt(day + 0.5)]) {
        const { components } = await rig(story.unknownRig, asOf);
        const found = components.nodes.map((one: any) => [one.designator, one.component.id]);
        expect(Object.fromEntries(found)).toEqual(expected);
      }
    }
  });
});
