import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { carried } from '../support/carried.js';
import { pathsOf, shedStory, type ShedStory } from '../support/shedStory.js';
import { testApi, type TestApi } from '../support/testApi.js';

const flat = (hours: number) => ({
  optimisticHours: hours,
  likelyHours: hours,
  pessimisticHours: hours,
});
const dayMs = 24 * 60 * 60 * 1000;

describe.each(['sqlite', 'postgres'] as const)('earned value on %s', (engine) => {
  let api: TestApi;
  let story: ShedStory;
  let id: string;
  let tasks: string[];
  beforeAll(async () => {
    api = await testApi(engine);
    story = await shedStory(api);
    id = await story.project('Recap');
    tasks = await story.tasks(id, [
      { title: 'Strip', estimate: flat(10) },
      { title: 'Recap', estimate: flat(20), rule: 'FIFTY_FIFTY', predecessorPositions: [0] },
      { title: 'Align', estimate: flat(10), predecessorPositions: [1] },
    ]);
  });
  afterAll(() => api?.close());

  const told = async (baselineId: string | null = null) =>
    (
      await api.ask(
        `query ($id: ID!, $baselineId: ID) { node(id: $id) { ... on Project { earnedValue(baselineId: $baselineId) {
          baseline { id }
          hours {
            budgetHours plannedHours earnedHours spentHours costVarianceHours scheduleVarianceHours
            estimateAtCompletionHours estimateAtBudgetedRateHours estimateAtBothRatesHours
            indices { costPerformance schedulePerformance toCompleteForBudget }
          }
          money { budget { amount } planned { amount } earned { amount } spent { amount } estimateAtCompletion { amount } indices { costPerformance } }
          bridge { baselineHours scopeGrowthHours overrunHours expectedAtCompletionHours changes { kind hours task { title } } }
          burnUp { on scopeHours plannedHours earnedHours spentHours }
          basis { method assumptions }
        } } } }`,
        { id, baselineId },
      )
    ).node.earnedValue;
  const session = (task: string, date: string, hours: number) =>
    story.session({
      personId: story.personId,
      taskId: task,
      startedAt: `${date}T06:00:00Z`,
      endedAt: new Date(Date.parse(`${date}T06:00:00Z`) + hours * 3_600_000).toISOString(),
    });

  it('has nothing planned and no bridge before a plan is kept', async () => {
    const { hours, money, bridge, baseline, burnUp } = await told();
    expect(hours).toMatchObject({
      budgetHours: 40,
      plannedHours: null,
      earnedHours: 0,
      spentHours: 0,
    });
    expect(hours.indices).toEqual({
      costPerformance: null,
      schedulePerformance: null,
      toCompleteForBudget: 1,
    });
    expect([money, bridge, baseline]).toEqual([null, null, null]);
    expect(burnUp).toHaveLength(1);
  });

  it('wants the hours a week to keep a plan, as long as no pace is known', async () => {
    const keep = async (input: object) =>
      (
        await api.ask(
          `mutation ($input: KeepBaselineInput!) { keepBaseline(input: $input) { problems { message path } } }`,
          { input: { projectId: id, ...input } },
        )
      ).keepBaseline;
    const unknown = await keep({});
    expect(unknown.problems[0].message).toMatch(/no pace is known yet/);
    expect(
      pathsOf(await keep({ hoursPerWeek: 0, budget: { amount: '1.005', currency: 'EUR' } })),
    ).toEqual(['budget.amount', 'hoursPerWeek']);
    const empty = await story.project('Empty');
    expect(pathsOf(await keep({ projectId: empty, hoursPerWeek: 5 }))).toEqual(['projectId']);
    expect(pathsOf(await keep({ hoursPerWeek: 0.001 }))).toEqual(['hoursPerWeek']);
  });

  it('keeps a plan: each task on its days, in an order in which they can be done', async () => {
    const kept = await carried(
      api,
      'keepBaseline',
      {
        projectId: id,
        hoursPerWeek: 10,
        startsOn: '2026-06-01',
        budget: { amount: '400.00', currency: 'EUR' },
        note: 'As quoted',
      },
      'baseline',
      '{ id version note hoursPerWeek budget { amount } tasks { budgetHours plannedStartOn plannedFinishOn task { title } } }',
    );
    expect(kept).toMatchObject({
      hoursPerWeek: 10,
      budget: { amount: '400.00' },
      note: 'As quoted',
    });
    expect(
      kept.tasks.map((each: any) => [each.task.title, each.plannedStartOn, each.plannedFinishOn]),
    ).toEqual([
      ['Strip', '2026-06-01', '2026-06-07'],
      ['Recap', '2026-06-08', '2026-06-21'],
      ['Align', '2026-06-22', '2026-06-28'],
    ]);
    const changed = await carried(
      api,
      'changeBaseline',
      { id: kept.id, version: 1, note: null },
      'baseline',
      '{ version note }',
    );
    expect(changed).toEqual({ version: 2, note: null });
  });

  it('compares planned, earned and spent two weeks on, in hours and in money', async () => {
    // Sunday 14 June, late: 20 of 40 hours were to be done. Strip took 15 h and is done; Recap is begun.
    api.nowMs = Date.parse('2026-06-14T20:00:00Z');
    await session(tasks[0]!, '2026-06-02', 8);
    await session(tasks[0]!, '2026-06-03', 7);
    await carried(api, 'finishTask', { id: tasks[0] }, 'task');
    await session(tasks[1]!, '2026-06-13', 5);
    await carried(
      api,
      'recordExpense',
      {
        itemId: story.rigId,
        projectId: id,
        spentOn: '2026-06-05',
        amount: { amount: '250.00', currency: 'EUR' },
        description: 'capacitors',
      },
      'expense',
    );
    const { hours, money, burnUp } = await told();
    // EV: Strip 10 + half of Recap 10 = 20; AC 20; PV 20. CPI and SPI 1.
    expect(hours).toEqual({
      budgetHours: 40,
      plannedHours: 20,
      earnedHours: 20,
      spentHours: 20,
      costVarianceHours: 0,
      scheduleVarianceHours: 0,
      estimateAtCompletionHours: 40,
      estimateAtBudgetedRateHours: 40,
      estimateAtBothRatesHours: 40,
      indices: { costPerformance: 1, schedulePerformance: 1, toCompleteForBudget: 1 },
    });
    expect(money).toEqual({
      budget: { amount: '400.00' },
      planned: { amount: '200.00' },
      earned: { amount: '200.00' },
      spent: { amount: '250.00' },
      estimateAtCompletion: { amount: '500.00' },
      indices: { costPerformance: 0.8 },
    });
    expect(burnUp.map((point: any) => point.on)).toEqual([
      '2026-05-31',
      '2026-06-07',
      '2026-06-14',
    ]);
    expect(burnUp[1]).toEqual({
      on: '2026-06-07',
      scopeHours: 40,
      plannedHours: 10,
      earnedHours: 0,
      spentHours: 15,
    });
    expect(burnUp[2]).toMatchObject({ earnedHours: 20, spentHours: 20, plannedHours: 20 });
  });

  it('tells scope growth apart from overrun, and the parts add up', async () => {
    api.nowMs += dayMs;
    await story.tasks(id, [{ title: 'Repaint', estimate: flat(6) }]);
    await carried(api, 'dropTask', { id: tasks[2] }, 'task');
    const { bridge, hours } = await told();
    expect(bridge.baselineHours).toBe(40);
    expect(bridge.scopeGrowthHours).toBe(-4);
    // Strip took 15 of 10; Recap is on its way within its 20.
    expect(bridge.overrunHours).toBe(5);
    expect(bridge.expectedAtCompletionHours).toBe(41);
    expect(bridge.changes).toEqual([
      { kind: 'DROPPED', hours: -10, task: { title: 'Align' } },
      { kind: 'ADDED', hours: 6, task: { title: 'Repaint' } },
      { kind: 'OVERRUN', hours: 5, task: { title: 'Strip' } },
    ]);
    expect(hours.budgetHours).toBe(36);
  });

  it('keeps the plan when an estimate changes; an earlier plan can still be compared with', async () => {
    const version = (
      await api.ask(`query ($id: ID!) { node(id: $id) { ... on Task { version } } }`, {
        id: tasks[1],
      })
    ).node.version;
    await carried(api, 'changeTask', { id: tasks[1], version, estimate: flat(30) }, 'task');
    const before = await told();
    expect(before.bridge).toMatchObject({ baselineHours: 40, overrunHours: 15 });
    await carried(api, 'keepBaseline', { projectId: id, hoursPerWeek: 10 }, 'baseline');
    const after = await told();
    // Done and open tasks are planned anew: 10 + 30 + 6.
    expect(after.bridge).toMatchObject({ baselineHours: 46, scopeGrowthHours: 0, overrunHours: 5 });
    const earlier = await told(before.baseline.id);
    expect(earlier.bridge.baselineHours).toBe(40);
  });
});
