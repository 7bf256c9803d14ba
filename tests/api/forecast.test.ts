import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { carried } from '../support/carried.js';
import { shedStory, type ShedStory } from '../support/shedStory.js';
import { testApi, type TestApi } from '../support/testApi.js';

const hours = (optimisticHours: number, likelyHours: number, pessimisticHours: number) => ({
  optimisticHours,
  likelyHours,
  pessimisticHours,
});

describe.each(['sqlite', 'postgres'] as const)('forecasts on %s', (engine) => {
  let api: TestApi;
  let story: ShedStory;
  beforeAll(async () => {
    api = await testApi(engine);
    story = await shedStory(api);
  });
  afterAll(() => api?.close());

  const forecast = async (projectId: string, asked: string) =>
    (
      await api.ask(`query ($id: ID!) { node(id: $id) { ... on Project { ${asked} } } }`, {
        id: projectId,
      })
    ).node;

  it('tells of a whole project: hours, the longest chain, what is critical, what moves the p80', async () => {
    const id = await story.project('Forecast');
    await story.tasks(id, [
      { title: 'Strip', estimate: hours(1, 2, 4) },
      { title: 'Wash', estimate: hours(2, 4, 12), predecessorPositions: [0] },
      { title: 'Tubes', estimate: { ...hours(1, 1, 2), distribution: 'TRIANGULAR' } },
      { title: 'Dial', estimate: { ...hours(1, 2, 9), distribution: 'LOGNORMAL' } },
    ]);
    const { forecast: told, tasks } = await forecast(
      id,
      `forecast {
        hours { expectedHours p50Hours p80Hours p95Hours varianceHours meanStandardErrorHours p80StandardErrorHours varianceStandardErrorHours }
        longestChain { p50Hours } analyticMeanHours analyticVarianceHours trials
        tasks { task { title } kind spentHours multiplier expectedHours p80Hours criticality }
        tornado { task { title } lowHours highHours p80IfCertainHours }
        basis { method assumptions counted { what count } }
      }
      tasks { nodes { estimate { distribution } } }`,
    );
    expect(told.trials).toBe(10_000);
    const { expectedHours, p50Hours, p80Hours, p95Hours } = told.hours;
    expect(p50Hours).toBeLessThan(p80Hours);
    expect(p80Hours).toBeLessThan(p95Hours);
    expect(Math.abs(expectedHours - told.analyticMeanHours)).toBeLessThan(
      5 * told.hours.meanStandardErrorHours + 0.02,
    );
    expect(Math.abs(told.hours.varianceHours - told.analyticVarianceHours)).toBeLessThan(
      6 * told.hours.varianceStandardErrorHours,
    );
    expect(told.longestChain.p50Hours).toBeLessThan(p50Hours);
    expect(told.tornado[0].task.title).toBe('Wash');
    const wash = told.tasks.find((each: any) => each.task.title === 'Wash');
    expect(wash).toMatchObject({ kind: 'WITHIN_ESTIMATE', spentHours: 0, multiplier: 1 });
    expect(wash.criticality).toBeGreaterThan(0.9);
    expect(told.basis.assumptions.join(' ')).toMatch(/correlate by 0.2/);
    expect(tasks.nodes.map((each: any) => each.estimate.distribution)).toEqual([
      'PERT_BETA',
      'PERT_BETA',
      'TRIANGULAR',
      'LOGNORMAL',
    ]);
  });

  it('says the same again, and otherwise for another seed or correlation', async () => {
    const id = await story.project('Seeded');
    await story.tasks(id, [
      { title: 'One', estimate: hours(1, 3, 9) },
      { title: 'Two', estimate: hours(1, 3, 9) },
    ]);
    const p80 = async () =>
      (await forecast(id, 'forecast { hours { p80Hours varianceHours } }')).forecast.hours;
    const first = await p80();
    expect(await p80()).toEqual(first);
    const set = (input: object) =>
      carried(
        api,
        'setForecastAssumptions',
        { projectId: id, ...input },
        'project',
        '{ plan { version correlation seed workedBy { name } } }',
      );
    expect(await set({ version: 0, correlation: 0.9 })).toEqual({
      plan: { version: 1, correlation: 0.9, seed: 'R-001', workedBy: { name: 'Ilse' } },
    });
    expect((await p80()).varianceHours).toBeGreaterThan(first.varianceHours);
    await set({ version: 1, correlation: 0.2, seed: 'another', workedById: story.helperId });
    expect(await p80()).not.toEqual(first);
    const told = await set({ version: 2, seed: null, workedById: null });
    expect(told.plan).toMatchObject({ seed: 'R-001', workedBy: { name: 'Ilse' } });
    expect(await p80()).toEqual(first);
  });

  it('refuses assumptions out of bounds, all at once, and an older version', async () => {
    const id = await story.project('Refused');
    const set = async (input: object) =>
      (
        await api.ask(
          `mutation ($input: SetForecastAssumptionsInput!) {
            setForecastAssumptions(input: $input) { project { id } problems { code path } }
          }`,
          { input: { projectId: id, ...input } },
        )
      ).setForecastAssumptions.problems;
    expect(await set({ version: 0, correlation: 1, seed: ' ', workedById: story.rigId })).toEqual([
      { code: 'INVALID', path: ['correlation'] },
      { code: 'INVALID', path: ['seed'] },
      { code: 'INVALID', path: ['workedById'] },
    ]);
    expect(await set({ version: 3 })).toEqual([{ code: 'OUT_OF_DATE', path: ['version'] }]);
  });

  it('never says that nothing is left of an unfinished task', async () => {
    const id = await story.project('Overdue');
    const [task] = await story.tasks(id, [{ title: 'Solder', estimate: hours(3, 5, 9) }]);
    const left = async () =>
      (
        await api.ask(
          `query ($id: ID!) { node(id: $id) { ... on Task { remaining { kind spentHours expectedHours p50Hours p80Hours p95Hours } } } }`,
          { id: task },
        )
      ).node.remaining;
    const work = (day: number, from: number, to: number) =>
      story.session({
        personId: story.personId,
        taskId: task,
        startedAt: `2026-05-${day}T${String(from).padStart(2, '0')}:00:00Z`,
        endedAt: `2026-05-${day}T${String(to).padStart(2, '0')}:00:00Z`,
      });
    expect((await work(11, 8, 16)).problems).toEqual([]);
    const within = await left();
    expect(within).toMatchObject({ kind: 'WITHIN_ESTIMATE', spentHours: 8 });
    expect(within.expectedHours).toBeGreaterThan(0);
    expect(within.expectedHours).toBeLessThan(1);
    await work(12, 8, 12);
    const refuted = await left();
    expect(refuted).toMatchObject({ kind: 'REFUTED', spentHours: 12 });
    expect(refuted.expectedHours).toBeGreaterThan(0.5);
    expect(refuted.p80Hours).toBeGreaterThan(refuted.p50Hours);
  });

  it('costs the same number of statements for one project as for many', async () => {
    const { projects } = await api.ask(
      '{ projects(first: 1) { nodes { tasks(first: 1) { nodes { id } } } } }',
    );
    const session = {
      personId: story.personId,
      taskId: projects.nodes[0].tasks.nodes[0].id,
      startedAt: '2026-05-13T08:00:00Z',
      endedAt: '2026-05-13T09:00:00Z',
    };
    expect((await story.session(session)).problems).toEqual([]);
    const count = async (first: number) => {
      const before = api.statements();
      await api.ask(
        `query ($first: Int!) { projects(first: $first) { nodes {
          forecast { hours { p80Hours } finish { p80On } weeksAhead { on } tasks { task { title } } }
          earnedValue { hours { budgetHours } } plan { seed } baselines { id }
        } } }`,
        { first },
      );
      return api.statements() - before;
    };
    expect(await count(4)).toBe(await count(1));
  });
});
