import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { pathsOf, shedStory, type ShedStory } from '../support/shedStory.js';
import { testApi, type TestApi } from '../support/testApi.js';

const taskFields = `id version ordinal title kind status rule percentComplete percentEvidence
  startedAt finishedAt note isReady hazardKinds cautions
  estimate { optimisticHours likelyHours pessimisticHours expectedHours }
  steps { id title weight doneAt } predecessors { title } successors { title }`;
const payload = `{ task { ${taskFields} } problems { code message path } }`;
const mutation = (name: string, input: string) =>
  `mutation ($input: ${input}!) { ${name}(input: $input) ${payload} }`;

describe.each(['sqlite', 'postgres'] as const)('tasks on %s', (engine) => {
  let api: TestApi;
  let story: ShedStory;
  beforeAll(async () => {
    api = await testApi(engine);
    story = await shedStory(api);
  });
  afterAll(() => api?.close());

  const act = async (name: string, input: object, type = 'TaskStatusInput') =>
    (await api.ask(mutation(name, type), { input }))[name];
  const taskOf = async (id: string) =>
    (await api.ask(`query ($id: ID!) { node(id: $id) { ... on Task { ${taskFields} } } }`, { id }))
      .node;
  const addTask = (projectId: string, task: object) =>
    act(
      'addTask',
      {
        projectId,
        task: {
          title: 'Clean',
          estimate: { optimisticHours: 1, likelyHours: 2, pessimisticHours: 6 },
          ...task,
        },
      },
      'AddTaskInput',
    );

  it('adds a list in one go, each waiting for others of the list or of the project', async () => {
    const projectId = await story.project('List');
    const [chassis] = await story.tasks(projectId, [{ title: 'Clean the chassis' }]);
    const [capacitors, align] = await story.tasks(projectId, [
      { title: 'Replace capacitors', kind: 'CAPACITORS', predecessorIds: [chassis] },
      { title: 'Align', kind: 'ALIGNMENT', predecessorPositions: [0], predecessorIds: [chassis] },
    ]);
    expect(await taskOf(align!)).toMatchObject({
      ordinal: 3,
      kind: 'ALIGNMENT',
      status: 'NOT_STARTED',
      rule: 'ZERO_HUNDRED',
      isReady: false,
      predecessors: [{ title: 'Clean the chassis' }, { title: 'Replace capacitors' }],
      successors: [],
    });
    await act('finishTask', { id: chassis });
    expect(await taskOf(chassis!)).toMatchObject({ status: 'DONE', isReady: false });
    expect(await taskOf(capacitors!)).toMatchObject({ isReady: true });
    expect(await taskOf(align!)).toMatchObject({ isReady: false });
    await act('dropTask', { id: capacitors });
    expect(await taskOf(align!)).toMatchObject({ isReady: true });
  });

  it('shows the PERT mean of an estimate kept in whole minutes', async () => {
    const { task } = await addTask(await story.project('Estimate'), {
      estimate: { optimisticHours: 0.26, likelyHours: 0.5, pessimisticHours: 1 },
    });
    expect(task.estimate.optimisticHours).toBeCloseTo(16 / 60, 12);
    expect(task.estimate.expectedHours).toBeCloseTo((16 + 4 * 30 + 60) / 6 / 60, 12);
  });

  it.each([
    ['negative', [-1, 2, 3], 'optimisticHours'],
    ['out of order', [3, 2, 4], 'likelyHours'],
    ['above 10,000 hours', [1, 2, 10_001], 'pessimisticHours'],
    ['nothing at all', [0, 0, 0], 'pessimisticHours'],
    ['less than half a minute', [0.001, 0.001, 0.001], 'pessimisticHours'],
  ])('refuses an estimate that is %s', async (_what, [a, m, b], field) => {
    const { task, problems } = await addTask(await story.project('Refused'), {
      estimate: { optimisticHours: a, likelyHours: m, pessimisticHours: b },
    });
    expect(task).toBeNull();
    expect(problems).toEqual([
      expect.objectContaining({ code: 'INVALID', path: ['task', 'estimate', field] }),
    ]);
  });

  it('takes no hours that are not a number', async () => {
    const projectId = await story.project('NaN');
    const { errors } = await api.tryToAsk(mutation('addTask', 'AddTaskInput'), {
      input: {
        projectId,
        task: {
          title: 'x',
          estimate: { optimisticHours: NaN, likelyHours: 1, pessimisticHours: 2 },
        },
      },
    });
    expect(errors?.[0]?.message).toMatch(/Float cannot represent/);
  });

  it('refuses tasks that wait for one another, and names the way round by titles', async () => {
    const projectId = await story.project('Circle');
    const circle = await story.tryToAddTasks(projectId, [
      { title: 'Align', predecessorPositions: [1] },
      { title: 'Clean', predecessorPositions: [0] },
    ]);
    expect(circle.tasks).toBeNull();
    expect(circle.problems[0]).toMatchObject({ code: 'CONFLICT', path: ['tasks'] });

    const [a, b, c] = await story.tasks(projectId, [
      { title: 'Clean' },
      { title: 'Mend', predecessorPositions: [0] },
      { title: 'Align', predecessorPositions: [1] },
    ]);
    const set = (id: string, predecessorIds: unknown[]) =>
      act('setPredecessors', { id, version: 1, predecessorIds }, 'SetPredecessorsInput');
    const refused = await set(a!, [c]);
    expect(refused.task).toBeNull();
    expect(refused.problems[0].code).toBe('CONFLICT');
    expect(refused.problems[0].path).toEqual(['predecessorIds']);
    const [, path] = /one another: (.*)\. Leave/.exec(refused.problems[0].message) ?? [];
    const round = ['“Clean”', '“Mend”', '“Align”'];
    const rounds = round.map((_, at) => [...round.slice(at), ...round.slice(0, at), round[at]]);
    expect(rounds.map((names) => names.join(' before '))).toContain(path);
    expect((await set(b!, [b])).problems[0].message).toContain('“Mend” before “Mend”');
    expect((await taskOf(a!)).predecessors).toEqual([]);

    const replaced = await set(c!, [a]);
    expect(replaced.task).toMatchObject({ version: 2, predecessors: [{ title: 'Clean' }] });
    const late = await set(c!, []);
    expect(late.problems[0].code).toBe('OUT_OF_DATE');
  });

  it('lets no two people close a circle at the same moment', async () => {
    const projectId = await story.project('Two people');
    const [a, b] = await story.tasks(projectId, [{ title: 'One' }, { title: 'Other' }]);
    const set = (id: unknown, other: unknown) =>
      act('setPredecessors', { id, version: 1, predecessorIds: [other] }, 'SetPredecessorsInput');
    const answers = await Promise.all([set(a, b), set(b, a)]);
    expect(answers.map(({ problems }) => problems.length).sort()).toEqual([0, 1]);
    expect(answers.flatMap(({ problems }) => problems)[0].code).toBe('CONFLICT');
  });

  it('keeps predecessors within a project', async () => {
    const [elsewhere] = await story.tasks(await story.project('Elsewhere'), [{ title: 'Far' }]);
    const here = await story.project('Here');
    const { problems } = await addTask(here, { predecessorIds: [elsewhere] });
    expect(problems).toEqual([expect.objectContaining({ code: 'NOT_FOUND', path: ['task'] })]);
    const { node } = await api.ask(
      `query ($id: ID!) { node(id: $id) { ... on Project { tasks { totalCount } } } }`,
      { id: here },
    );
    expect(node.tasks.totalCount).toBe(0);
  });

  it('moves from not started to done and back, and says why where it does not', async () => {
    const [id] = await story.tasks(await story.project('Moves'), [{ title: 'Rewire' }]);
    expect((await act('startTask', { id })).task).toMatchObject({
      status: 'IN_PROGRESS',
      startedAt: '2026-06-01T12:00:00.000Z',
    });
    expect((await act('startTask', { id })).problems[0]).toMatchObject({ code: 'CONFLICT' });
    api.nowMs += 3_600_000;
    expect((await act('finishTask', { id, note: 'New cord.' })).task).toMatchObject({
      status: 'DONE',
      finishedAt: '2026-06-01T13:00:00.000Z',
      note: 'New cord.',
    });
    expect((await act('finishTask', { id })).problems[0].message).toBe('“Rewire” is done already.');
    expect((await act('dropTask', { id })).problems[0].message).toContain('Reopen it first');
    expect((await act('reopenTask', { id, note: 'Plug was wrong.' })).task).toMatchObject({
      status: 'IN_PROGRESS',
      finishedAt: null,
      note: 'New cord.\nPlug was wrong.',
    });
    expect((await act('dropTask', { id })).task).toMatchObject({ status: 'DROPPED' });
  });

  it('is finished once, however many finish it at the same time', async () => {
    const [id] = await story.tasks(await story.project('At once'), [{ title: 'Test' }]);
    const answers = await Promise.all([1, 2, 3].map(() => act('finishTask', { id })));
    expect(answers.filter(({ task }) => task !== null)).toHaveLength(1);
    expect((await taskOf(id!)).version).toBe(2);
  });

  it('earns by weighted steps, which are marked one by one', async () => {
    const projectId = await story.project('Steps');
    const none = await addTask(projectId, { rule: 'WEIGHTED_STEPS' });
    expect(none.problems).toEqual([
      expect.objectContaining({ code: 'INVALID', path: ['task', 'steps'] }),
    ]);
    const weightless = await addTask(projectId, {
      rule: 'WEIGHTED_STEPS',
      steps: [{ title: 'Dial', weight: 0 }],
    });
    expect(weightless.problems[0].path).toEqual(['task', 'steps', '0', 'weight']);
    const { task } = await addTask(projectId, {
      rule: 'WEIGHTED_STEPS',
      steps: [
        { title: 'Dial', weight: 3 },
        { title: 'Knobs', weight: 1 },
      ],
    });
    const [dial, knobs] = task.steps;
    const marked = await act(
      'markSteps',
      { taskId: task.id, steps: [{ stepId: dial.id }] },
      'MarkStepsInput',
    );
    expect(marked.task).toMatchObject({ status: 'IN_PROGRESS' });
    expect(marked.task.steps).toMatchObject([
      { doneAt: '2026-06-01T13:00:00.000Z' },
      { doneAt: null },
    ]);
    const foreign = await act(
      'markSteps',
      { taskId: task.id, steps: [{ stepId: task.id }] },
      'MarkStepsInput',
    );
    expect(foreign.problems[0].path).toEqual(['steps', '0', 'stepId']);

    const change = (version: number, steps: object[]) =>
      act('changeTask', { id: task.id, version, steps }, 'ChangeTaskInput');
    const lost = await change(2, [{ id: knobs.id, title: 'Knobs', weight: 1 }]);
    expect(lost.problems[0].message).toContain('The step “Dial” is done');
    const changed = await change(2, [
      { title: 'Lamps', weight: 2 },
      { id: dial.id, title: 'Dial glass', weight: 5 },
    ]);
    expect(changed.task.version).toBe(3);
    expect(changed.task.steps).toEqual([
      expect.objectContaining({ title: 'Lamps', weight: 2, doneAt: null }),
      expect.objectContaining({ id: dial.id, title: 'Dial glass', weight: 5 }),
    ]);
    const late = await change(2, []);
    expect(late.problems.length).toBeGreaterThan(0);
  });

  it('earns by a percentage only with what shows it', async () => {
    const projectId = await story.project('Percent');
    const { task } = await addTask(projectId, { rule: 'PERCENT_WITH_EVIDENCE' });
    const state = (percent: number, evidence: string, id = task.id, version = 1) =>
      act('statePercent', { id, version, percent, evidence }, 'StatePercentInput');
    const wrong = await state(120, ' ');
    expect(pathsOf(wrong)).toEqual(['evidence', 'percent']);
    expect((await state(60, '9 of 15 capacitors')).task).toMatchObject({
      version: 2,
      status: 'IN_PROGRESS',
      percentComplete: 60,
      percentEvidence: '9 of 15 capacitors',
    });
    // Asked by itself, without the columns that other fields bring along.
    const { node } = await api.ask(
      `query ($id: ID!) { node(id: $id) { ... on Project {
        tasks(first: 9) { nodes { evidence { kind note } } } } } }`,
      { id: projectId },
    );
    const evidence = { kind: 'NOTE', note: '9 of 15 capacitors' };
    expect(node.tasks.nodes).toEqual([{ evidence }]);
    const other = (await addTask(projectId, {})).task;
    expect((await state(60, 'seen', other.id)).problems[0]).toMatchObject({ code: 'CONFLICT' });
  });

  it('shows the cautions for what can hurt', async () => {
    const { task } = await addTask(await story.project('Hazards'), {
      hazardKinds: ['STORED_CHARGE', 'STORED_CHARGE', 'HOT_PARTS'],
    });
    expect(task.hazardKinds).toEqual(['STORED_CHARGE', 'HOT_PARTS']);
    expect(task.cautions.length).toBeGreaterThanOrEqual(2);
    expect(task.cautions).toContainEqual(expect.stringMatching(/discharge/i));
    const { task: harmless } = await addTask(await story.project('Harmless'), {});
    expect(harmless.cautions).toEqual([]);
  });

  it('reads a page of tasks with all that hangs on them at a fixed number of statements', async () => {
    const projectId = await story.project('Many');
    const ids = await story.tasks(
      projectId,
      Array.from({ length: 30 }, (_, n) => ({
        title: `Task ${n}`,
        ...(n > 0 && { predecessorPositions: [n - 1] }),
      })),
    );
    const page = `query ($id: ID!, $first: Int!, $after: String) { node(id: $id) { ... on Project {
      tasks(first: $first, after: $after) {
        totalCount pageInfo { hasNextPage endCursor }
        nodes { id ordinal isReady steps { id } predecessors { id } successors { id } sessions(first: 1) { nodes { id } } }
      } } } }`;
    const count = async (first: number) => {
      const before = api.statements();
      await api.ask(page, { id: projectId, first });
      return api.statements() - before;
    };
    expect(await count(30)).toBe(await count(2));
    const seen: string[] = [];
    for (let after: string | null = null, more = true; more;) {
      const answer: any = await api.ask(page, { id: projectId, first: 7, after });
      const { tasks } = answer.node;
      for (const { id } of tasks.nodes) seen.push(id);
      expect(tasks.totalCount).toBe(30);
      ({ hasNextPage: more, endCursor: after } = tasks.pageInfo);
    }
    expect(seen).toEqual(ids);
  });
});
