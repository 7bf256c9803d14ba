import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { carried } from '../support/carried.js';
import { pathsOf, shedStory, type ShedStory } from '../support/shedStory.js';
import { testApi, type TestApi } from '../support/testApi.js';

const shown = `{ id title isShipped version sourceProject { title }
  tasks { position title kind optimisticHours likelyHours pessimisticHours rule predecessorPositions
    steps { title weight } hazardKinds history { tasks medianHours } } }`;

describe.each(['sqlite', 'postgres'] as const)('task templates on %s', (engine) => {
  let api: TestApi;
  let story: ShedStory;
  beforeAll(async () => {
    api = await testApi(engine);
    story = await shedStory(api);
  });
  afterAll(() => api?.close());

  const templates = async () =>
    (await api.ask(`{ taskTemplates ${shown} }`)).taskTemplates as any[];
  const apply = async (input: object) =>
    (
      await api.ask(
        `mutation ($input: ApplyTaskTemplateInput!) { applyTaskTemplate(input: $input) {
          tasks { id title estimate { optimisticHours likelyHours pessimisticHours } predecessors { title } }
          problems { code message path } } }`,
        { input },
      )
    ).applyTaskTemplate;
  const named = async (title: string) => {
    const found = (await templates()).find((template) => template.title === title);
    if (!found) throw new Error(`no template ${title}`);
    return found;
  };

  it('come with the program for the usual jobs, each with tasks in an order', async () => {
    expect((await templates()).map(({ title }) => title)).toEqual([
      'Cabinet refinish',
      'Cleaning',
      'Full capacitor replacement',
      'Intake',
      'Power supply rebuild',
      'Receiver alignment',
      'Tube sweep',
    ]);
    for (const { tasks, isShipped, version } of await templates()) {
      expect([isShipped, version]).toEqual([true, null]);
      expect(tasks.length).toBeGreaterThan(5);
    }
  });

  it('put their tasks into a project, with what waits for what', async () => {
    const projectId = await story.project('Intake of R-001');
    const { id, tasks } = await named('Intake');
    const answer = await apply({ templateId: id, projectId });
    expect(answer.problems).toEqual([]);
    expect(answer.tasks).toHaveLength(tasks.length);
    const decide = answer.tasks.at(-1);
    expect(decide.predecessors.map(({ title }: any) => title)).toEqual([
      'Record where it came from, what was said and what was paid',
      'Tick the fit-out off against what is there',
      'Raise every hazard found, with its caution on the set',
    ]);
  });

  it('put in only what is chosen, and lose no order by it', async () => {
    const projectId = await story.project('Some of it');
    const { id } = await named('Intake');
    const answer = await apply({ templateId: id, projectId, positions: [1, 4, 8] });
    expect(
      answer.tasks.map(({ predecessors }: any) => predecessors.map((one: any) => one.title)),
    ).toEqual([
      [],
      ['Photograph outside, labels and serial number'],
      [
        'Photograph outside, labels and serial number',
        'Inspect zone by zone with findings and photographs',
      ],
    ]);
    expect(pathsOf(await apply({ templateId: id, projectId, positions: [99] }))).toEqual([
      'positions.0',
    ]);
  });

  it('take durations from what the same task took before', async () => {
    const projectId = await story.project('Sweep', story.otherRigId);
    const { id, tasks } = await named('Tube sweep');
    const position = tasks.findIndex(({ title }: any) => title === 'Clean pins and sockets');
    const first = await apply({ templateId: id, projectId, positions: [position] });
    const [task] = first.tasks;
    expect(task.estimate).toEqual({
      optimisticHours: 0.3,
      likelyHours: 0.7,
      pessimisticHours: 1.5,
    });
    await story.session({
      taskId: task.id,
      startedAt: '2026-05-01T08:00:00Z',
      endedAt: '2026-05-01T09:24:00Z',
    });
    await carried(api, 'finishTask', { id: task.id }, 'task');
    const again = await apply({ templateId: id, projectId, positions: [position] });
    expect(again.tasks[0].estimate).toEqual({
      optimisticHours: 0.6,
      likelyHours: 1.4,
      pessimisticHours: 3,
    });
    const asFile = await apply({
      templateId: id,
      projectId,
      positions: [position],
      usesHistory: false,
    });
    expect(asFile.tasks[0].estimate.likelyHours).toBe(0.7);
    expect((await named('Tube sweep')).tasks[position].history).toEqual({
      tasks: 1,
      medianHours: 1.4,
    });
  });

  it('are made from a past project, without what was dropped and with the hours it took', async () => {
    const projectId = await story.project('Rewiring');
    const [cord, dropped] = await story.tasks(projectId, [
      {
        title: 'New cord',
        kind: 'WIRING',
        rule: 'WEIGHTED_STEPS',
        steps: [{ title: 'Fuse', weight: 2 }],
        hazardKinds: ['DAMAGED_CORD'],
      },
      { title: 'Gilding', predecessorPositions: [0] },
      { title: 'Test', kind: 'TESTING', predecessorPositions: [0, 1] },
    ]);
    await story.session({
      taskId: cord,
      startedAt: '2026-05-02T08:00:00Z',
      endedAt: '2026-05-02T12:00:00Z',
    });
    await carried(api, 'finishTask', { id: cord }, 'task');
    await carried(api, 'dropTask', { id: dropped }, 'task');
    const template = await carried(
      api,
      'makeTaskTemplate',
      { title: 'Our cord', projectId },
      'template',
      shown,
    );
    expect(template).toMatchObject({
      title: 'Our cord',
      isShipped: false,
      version: 1,
      sourceProject: { title: 'Rewiring' },
    });
    expect(template.tasks).toMatchObject([
      {
        title: 'New cord',
        likelyHours: 4,
        steps: [{ title: 'Fuse', weight: 2 }],
        hazardKinds: ['DAMAGED_CORD'],
      },
      { title: 'Test', likelyHours: 2, predecessorPositions: [0] },
    ]);
    expect((await templates())[0].title).toBe('Our cord');
  });

  it('are changed by their owner, and those of the program copied first', async () => {
    const { id } = await named('Cleaning');
    const change = async (input: object) =>
      (
        await api.ask(
          `mutation ($input: ChangeTaskTemplateInput!) { changeTaskTemplate(input: $input) {
            template { version title retiredAt tasks { title } } problems { code message path } } }`,
          { input },
        )
      ).changeTaskTemplate;
    expect((await change({ id, version: 1, title: 'Mine' })).problems[0]).toMatchObject({
      code: 'CONFLICT',
    });
    const own = await carried(
      api,
      'makeTaskTemplate',
      { title: 'Mine', templateId: id },
      'template',
      '{ id tasks { title } }',
    );
    expect(own.tasks.length).toBeGreaterThan(5);
    const estimate = { optimisticHours: 1, likelyHours: 2, pessimisticHours: 3 };
    const bad = await change({
      id: own.id,
      version: 1,
      tasks: [{ title: ' ', estimate, predecessorPositions: [0] }],
    });
    expect(pathsOf(bad).sort()).toEqual(['tasks.0.predecessorPositions', 'tasks.0.title']);
    const good = await change({
      id: own.id,
      version: 1,
      tasks: [{ title: 'Dust', estimate }],
      isRetired: true,
    });
    expect(good.template).toMatchObject({ version: 2, tasks: [{ title: 'Dust' }] });
    expect((await templates()).some(({ title }) => title === 'Mine')).toBe(false);
    const both = await Promise.all(
      ['One', 'Two'].map((title) => change({ id: own.id, version: 2, title })),
    );
    expect(both.filter(({ template }) => template !== null)).toHaveLength(1);
  });

  it('are made from one thing, not from two or none', async () => {
    const make = async (input: object) =>
      (
        await api.ask(
          `mutation ($input: MakeTaskTemplateInput!) { makeTaskTemplate(input: $input) { problems { path } } }`,
          { input },
        )
      ).makeTaskTemplate;
    expect(pathsOf(await make({ title: 'Nothing' }))).toEqual(['projectId']);
    const empty = await story.project('Empty');
    expect(pathsOf(await make({ title: 'Empty', projectId: empty }))).toEqual(['projectId']);
  });
});
