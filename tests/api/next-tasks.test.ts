import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { benchStory, type BenchStory } from '../support/benchStory.js';
import { carried } from '../support/carried.js';
import { testApi, type TestApi } from '../support/testApi.js';

const asked = `query ($minutes: Int!, $itemId: ID) { whatNext(minutes: $minutes, itemId: $itemId, first: 20) {
  suggestions { hazards fits leftMinutes points reasons { code message points } task { id title cautions project { item { inventoryNumber } } } }
  heldBack { task { title } reasons }
  basis { method counted { what count } } } }`;
const estimate = (hours: number) => ({
  optimisticHours: hours,
  likelyHours: hours,
  pessimisticHours: hours,
});

describe.each(['sqlite', 'postgres'] as const)('what next on %s', (engine) => {
  let api: TestApi;
  let story: BenchStory;
  let ids: string[];
  beforeAll(async () => {
    api = await testApi(engine);
    story = await benchStory(api);
    const project = async (itemId: string, title: string) =>
      (await carried(api, 'openProject', { itemId, title, targetStandard: 'WORKING' }, 'project'))
        .id;
    const tasks = async (projectId: string, list: object[]): Promise<string[]> =>
      (await carried(api, 'addTasks', { projectId, tasks: list }, 'tasks')).map(
        ({ id }: any) => id,
      );
    ids = await tasks(await project(story.rig, 'Rig one'), [
      { title: 'Gate', estimate: estimate(0.5), hazardKinds: ['LETHAL_VOLTAGE'] },
      { title: 'Behind', estimate: estimate(4), predecessorPositions: [0] },
    ]);
    ids.push(
      ...(await tasks(await project(story.otherRig, 'Rig two'), [
        { title: 'Fit the tube', kind: 'TUBES', estimate: estimate(0.5) },
        { title: 'Long job', estimate: estimate(6) },
      ])),
    );
  });
  afterAll(() => api?.close());

  const next = async (minutes = 60, itemId?: string) =>
    (await api.ask(asked, { minutes, itemId })).whatNext;
  const titles = (answer: any) => answer.suggestions.map(({ task }: any) => task.title);

  it('names what can be done now, what fits first, each with its reasons', async () => {
    const answer = await next();
    expect(titles(answer)).toEqual(['Gate', 'Fit the tube', 'Long job']);
    expect(answer.suggestions.map(({ fits }: any) => fits)).toEqual([true, true, false]);
    expect(answer.suggestions[0].reasons.map(({ code }: any) => code)).toEqual([
      'BRINGS_ITEM_NEARER',
      'OPENS_TASKS',
      'FREES_PROJECT',
      'EARNS_COMPLETION',
    ]);
    expect(answer.suggestions[0].task.cautions.length).toBeGreaterThan(0);
    expect(answer.basis.counted).toContainEqual({ what: 'tasks whose turn it is', count: 3 });
    expect(titles(await next(60, story.otherRig))).toEqual(['Fit the tube', 'Long job']);
  });

  it('holds a task back until its part lies on the shelf', async () => {
    const needed = { id: ids[2], version: 1, parts: [{ partTypeId: story.tubeType, quantity: 1 }] };
    const task = await carried(
      api,
      'setPartsNeeded',
      needed,
      'task',
      '{ partsNeeded { quantity onShelf partType { designation } } }',
    );
    expect(task.partsNeeded).toEqual([
      { quantity: 1, onShelf: 0, partType: { designation: '6146B' } },
    ]);
    const answer = await next();
    expect(titles(answer)).not.toContain('Fit the tube');
    expect(answer.heldBack).toEqual([
      { task: { title: 'Fit the tube' }, reasons: ['It needs 1 × 6146B; none lies ready.'] },
    ]);
    // A tube taken out of another set and put on the shelf lies ready.
    const fitting = await carried(
      api,
      'fitComponent',
      {
        itemId: story.unknownRig,
        designator: 'V1',
        fittedAt: '2026-05-01T10:00:00Z',
        component: { partTypeId: story.tubeType, origin: 'UNKNOWN' },
      },
      'fitting',
      '{ component { id } }',
    );
    expect(titles(await next())).not.toContain('Fit the tube');
    const removing = {
      componentId: fitting.component.id,
      removedAt: '2026-05-02T10:00:00Z',
      disposition: 'STOCK',
    };
    await carried(api, 'removeComponent', removing, 'fitting');
    expect(titles(await next())).toContain('Fit the tube');
  });

  it('counts what is put aside for the task, and not what is put aside for another', async () => {
    const needed = { id: ids[2], version: 2, parts: [{ partTypeId: story.tubeType, quantity: 3 }] };
    const show = '{ partsNeeded { onShelf putAside } }';
    const before = await carried(api, 'setPartsNeeded', needed, 'task', show);
    expect(before.partsNeeded).toEqual([{ onShelf: 1, putAside: 0 }]);
    const lot = { partTypeId: story.tubeType, quantity: 2, condition: 'UNUSED' };
    await carried(api, 'addStock', lot, 'stockLot');
    expect(titles(await next())).toContain('Fit the tube');
    const aside = { partTypeId: story.tubeType, quantity: 1, taskId: ids[3] };
    await carried(api, 'reserveStock', aside, 'reservations');
    expect((await next()).heldBack[0].reasons).toEqual(['It needs 3 × 6146B; 2 lie ready.']);
    const own = { partTypeId: story.tubeType, quantity: 1, taskId: ids[2] };
    await carried(api, 'reserveStock', own, 'reservations');
    const less = { ...needed, version: 3, parts: [{ ...needed.parts[0], quantity: 2 }] };
    const after = await carried(api, 'setPartsNeeded', less, 'task', show);
    expect(after.partsNeeded).toEqual([{ onShelf: 2, putAside: 1 }]);
    expect(titles(await next())).toContain('Fit the tube');
  });

  it('holds back what does not reckon with a hazard of the set, until that is cleared', async () => {
    const hazard = await carried(
      api,
      'raiseHazard',
      { itemId: story.rig, kind: 'STORED_CHARGE', note: 'Main filter' },
      'hazard',
    );
    const answer = await next();
    expect(titles(answer)).not.toContain('Gate');
    const [held] = answer.heldBack;
    expect(held.task.title).toBe('Gate');
    expect(held.reasons[0]).toContain('stored charge (Main filter)');
    const cleared = {
      id: hazard.id,
      version: 1,
      clearedByCheck: '0.2 V across the filter after 60 s',
      clearedById: story.person,
    };
    await carried(api, 'clearHazard', cleared, 'hazard');
    expect(titles(await next())).toContain('Gate');
    // What the task itself names it reckons with; it is shown first all the same.
    await carried(
      api,
      'raiseHazard',
      { itemId: story.rig, kind: 'LETHAL_VOLTAGE', note: '900 V' },
      'hazard',
    );
    const gate = (await next()).suggestions.find(({ task }: any) => task.title === 'Gate');
    expect(gate.hazards[0]).toContain('lethal voltage (900 V)');
  });

  it('refuses a time that is none, and costs a fixed number of statements', async () => {
    const { errors } = await api.tryToAsk(asked, { minutes: 0 });
    expect(errors?.[0]?.message).toContain('"minutes" must be from 1 to 10080');
    const cost = async () => {
      const before = api.statements();
      await next();
      return api.statements() - before;
    };
    const few = await cost();
    const { id: projectId } = await carried(
      api,
      'openProject',
      { itemId: story.unknownRig, title: 'More', targetStandard: 'WORKING' },
      'project',
    );
    const more = Array.from({ length: 30 }, (_, index) => ({
      title: `Job ${index}`,
      estimate: estimate(1),
    }));
    await carried(api, 'addTasks', { projectId, tasks: more }, 'tasks');
    expect(await cost()).toBe(few);
  });
});
