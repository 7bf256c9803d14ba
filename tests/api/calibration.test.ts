import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { carried } from '../support/carried.js';
import { shedStory, type ShedStory } from '../support/shedStory.js';
import { testApi, type TestApi } from '../support/testApi.js';

const flat = (hours: number) => ({
  optimisticHours: hours,
  likelyHours: hours,
  pessimisticHours: hours,
});

describe.each(['sqlite', 'postgres'] as const)('calibration on %s', (engine) => {
  let api: TestApi;
  let story: ShedStory;
  beforeAll(async () => {
    api = await testApi(engine);
    story = await shedStory(api);
  });
  afterAll(() => api?.close());

  const told = async () =>
    (
      await api.ask(`{ collection { calibration {
        tasks rawRatio weight multiplier multiplierLow multiplierHigh
        kinds { kind tasks rawRatio weight multiplier }
        evidence(first: 3) { kind estimatedHours actualHours ratio task { title } }
        backTest { verdict tasks curve { stated observed } pinballHours uncalibratedPinballHours }
        basis { counted { what count } assumptions }
      } } }`)
    ).collection.calibration;

  it('leaves estimates as they are while there is no history', async () => {
    expect(await told()).toMatchObject({
      tasks: 0,
      rawRatio: null,
      multiplier: 1,
      kinds: [],
      evidence: [],
      backTest: { verdict: 'TOO_FEW', tasks: 0, curve: [] },
    });
  });

  it('learns from finished tasks, by the estimate as it stood when work began', async () => {
    const id = await story.project('History');
    const tasks = await story.tasks(
      id,
      Array.from({ length: 12 }, (_, index) => ({
        title: `Repair ${index + 1}`,
        kind: 'REPAIR',
        estimate: flat(2),
      })),
    );
    for (const [index, task] of tasks.entries()) {
      const day = String(index + 1).padStart(2, '0');
      await story.session({
        personId: story.personId,
        taskId: task,
        startedAt: `2026-05-${day}T08:00:00Z`,
        endedAt: `2026-05-${day}T12:00:00Z`,
      });
    }
    // An estimate mended while the work went on would always seem right: it does not count.
    api.nowMs += 60_000;
    const version = (
      await api.ask(`query ($id: ID!) { node(id: $id) { ... on Task { version } } }`, {
        id: tasks[0],
      })
    ).node.version;
    await carried(api, 'changeTask', { id: tasks[0], version, estimate: flat(4) }, 'task');
    for (const task of tasks) {
      api.nowMs += 60_000;
      await carried(api, 'finishTask', { id: task }, 'task');
    }
    const [untimed] = await story.tasks(id, [{ title: 'Untimed', kind: 'TUBES' }]);
    await carried(api, 'finishTask', { id: untimed }, 'task');

    const calibration = await told();
    expect(calibration).toMatchObject({ tasks: 12, rawRatio: 2 });
    expect(calibration.multiplier).toBeGreaterThan(1.5);
    expect(calibration.multiplier).toBeLessThan(2);
    expect(calibration.kinds).toMatchObject([
      { kind: 'REPAIR', tasks: 12, rawRatio: 2, weight: 0 },
    ]);
    expect(calibration.evidence[0]).toEqual({
      kind: 'REPAIR',
      estimatedHours: 2,
      actualHours: 4,
      ratio: 2,
      task: { title: 'Repair 12' },
    });
    expect(calibration.evidence).toHaveLength(3);
    expect(calibration.basis.counted).toEqual([
      { what: 'finished tasks with hours', count: 12 },
      { what: 'finished tasks without hours, left out', count: 1 },
    ]);
    expect(calibration.backTest).toMatchObject({ tasks: 12, verdict: 'TOO_OPTIMISTIC' });
    expect(calibration.backTest.pinballHours).toBeLessThan(
      calibration.backTest.uncalibratedPinballHours,
    );
  });

  it('is applied to forecasts, and can be left out of them', async () => {
    const id = await story.project('Next');
    await story.tasks(id, [{ title: 'Repair again', kind: 'REPAIR', estimate: flat(2) }]);
    const { node } = await api.ask(
      `query ($id: ID!) { node(id: $id) { ... on Project {
        forecast { hours { p50Hours } tasks { multiplier } }
        asEntered: forecast(isCalibrated: false) { hours { p50Hours } tasks { multiplier } }
      } } }`,
      { id },
    );
    expect(node.asEntered).toEqual({ hours: { p50Hours: 2 }, tasks: [{ multiplier: 1 }] });
    expect(node.forecast.tasks[0].multiplier).toBeGreaterThan(1.5);
    expect(node.forecast.hours.p50Hours).toBeCloseTo(2 * node.forecast.tasks[0].multiplier, 1);
  });
});
