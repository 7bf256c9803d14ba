import { afterAll, afterEach, beforeAll, describe, expect, it } from 'vitest';
import { openCollection } from '../../src/features/openCollection.js';
import { pathsOf, shedStory, type ShedStory } from '../support/shedStory.js';
import { testApi, type TestApi } from '../support/testApi.js';

const sessionFields = `id version startedAt endedAt zone note netSeconds person { name }
  item { id inventoryNumber } task { id status startedAt } breaks { startedAt endedAt }`;
const minuteMs = 60_000;
const hourMs = 60 * minuteMs;

describe.each(['sqlite', 'postgres'] as const)('timers on %s', (engine) => {
  let api: TestApi;
  let story: ShedStory;
  beforeAll(async () => {
    api = await testApi(engine);
    story = await shedStory(api);
  });
  afterEach(async () => {
    const { runningTimers } = await api.ask(
      `{ runningTimers { startedAt person { id } breaks { startedAt } } }`,
    );
    for (const { person, startedAt, breaks } of runningTimers) {
      for (const { startedAt: latest } of [{ startedAt }, ...breaks]) {
        api.nowMs = Math.max(api.nowMs, Date.parse(latest) + minuteMs);
      }
      const endedAt = new Date(api.nowMs).toISOString();
      await timer('stopTimer', { personId: person.id, endedAt });
    }
    api.nowMs += hourMs;
  });
  afterAll(() => api?.close());

  const inputs: Record<string, string> = {
    startTimer: 'StartTimerInput',
    stopTimer: 'StopTimerInput',
    correctSession: 'CorrectSessionInput',
  };
  const timer = async (name: string, input: object = {}) =>
    (
      await api.ask(
        `mutation ($input: ${inputs[name] ?? 'TimerInput'}!) {
          ${name}(input: $input) {
            session { ${sessionFields} } problems { code message path }
            hazards { kind note } overlaps { seconds session { id } }
          }
        }`,
        { input },
      )
    )[name];
  const at = (offsetMs = 0) => new Date(api.nowMs + offsetMs).toISOString();

  it('runs for the owner in the zone of the collection, on a task that is then in progress', async () => {
    const projectId = await story.project('Timer');
    const [taskId] = await story.tasks(projectId, [{ title: 'Clean' }]);
    const { session } = await timer('startTimer', { taskId, note: 'Dial first.' });
    expect(session).toMatchObject({
      endedAt: null,
      zone: 'Europe/Berlin',
      person: { name: 'Ilse' },
      item: { inventoryNumber: 'R-001' },
      task: { status: 'IN_PROGRESS', startedAt: at() },
    });
    const started = at();
    api.nowMs += 90 * minuteMs;
    const { runningTimers } = await api.ask(`{ runningTimers { id netSeconds } }`);
    expect(runningTimers).toEqual([{ id: session.id, netSeconds: 5400 }]);
    const stopped = await timer('stopTimer', { note: 'Done for today.' });
    expect(stopped.session).toMatchObject({
      startedAt: started,
      endedAt: at(),
      netSeconds: 5400,
      note: 'Dial first.\nDone for today.',
    });
    expect((await api.ask(`{ runningTimers { id } }`)).runningTimers).toEqual([]);
  });

  it('survives a restart', async () => {
    const { session } = await timer('startTimer', { itemId: story.rigId });
    await api.database.close();
    api.nowMs += 2 * hourMs;
    api.database = await openCollection(api.url);
    const { runningTimers } = await api.ask(`{ runningTimers { id netSeconds } }`);
    expect(runningTimers).toEqual([{ id: session.id, netSeconds: 7200 }]);
    expect((await timer('stopTimer')).session.netSeconds).toBe(7200);
  });

  it('refuses a second timer of the same person and names the one that runs', async () => {
    const projectId = await story.project('Two timers', story.otherRigId);
    const [taskId] = await story.tasks(projectId, [{ title: 'Rewire the supply' }]);
    api.nowMs = Date.parse('2026-06-20T08:15:00Z');
    await timer('startTimer', { taskId });
    const second = await timer('startTimer', { itemId: story.rigId });
    expect(second).toMatchObject({ session: null, hazards: [], overlaps: [] });
    expect(second.problems).toEqual([
      {
        code: 'CONFLICT',
        message:
          'A timer of Ilse has been running on R-002, task “Rewire the supply” ' +
          'since 2026-06-20 10:15 (Europe/Berlin). Stop it first.',
        path: ['personId'],
      },
    ]);
    const helper = { personId: story.helperId, itemId: story.rigId };
    expect((await timer('startTimer', helper)).problems).toEqual([]);
  });

  it('starts one timer, however many are started at the same moment', async () => {
    const starts = [1, 2, 3, 4].map(() => timer('startTimer', { itemId: story.rigId }));
    const answers = await Promise.all(starts);
    expect(answers.filter(({ session }) => session !== null)).toHaveLength(1);
    for (const { problems } of answers.filter(({ session }) => session === null)) {
      expect(problems[0].message).toContain('A timer of Ilse has been running on R-001');
    }
    expect((await api.ask(`{ runningTimers { id } }`)).runningTimers).toHaveLength(1);
  });

  it('leaves breaks out, and closes one that still lasts at the stop', async () => {
    await timer('startTimer', { itemId: story.rigId });
    expect((await timer('endBreak')).problems[0].message).toBe(
      'No break lasts: there is none to end.',
    );
    api.nowMs += 30 * minuteMs;
    await timer('takeBreak');
    expect((await timer('takeBreak')).problems[0]).toMatchObject({ code: 'CONFLICT' });
    api.nowMs += 10 * minuteMs;
    expect((await timer('endBreak')).session.netSeconds).toBe(1800);
    api.nowMs += 20 * minuteMs;
    await timer('takeBreak');
    api.nowMs += 15 * minuteMs;
    const { session } = await timer('stopTimer');
    expect(session.netSeconds).toBe(50 * 60);
    expect(session.breaks).toHaveLength(2);
    expect(session.breaks[1].endedAt).toBe(session.endedAt);
  });

  it('takes a break that began when the work ended for the end of the work', async () => {
    await timer('startTimer', { itemId: story.rigId });
    api.nowMs += hourMs;
    const endedAt = at();
    await timer('takeBreak');
    api.nowMs += 20 * hourMs;
    const asked = await timer('stopTimer');
    expect(asked.problems[0].message).toContain('A break has lasted since');
    const { session } = await timer('stopTimer', { endedAt });
    expect(session).toMatchObject({ endedAt, netSeconds: 3600, breaks: [] });
  });

  it('asks when the work ended once a timer has run for more than 16 hours', async () => {
    const start = at();
    await timer('startTimer', { itemId: story.rigId });
    api.nowMs += 16 * hourMs;
    expect((await api.ask(`{ runningTimers { netSeconds } }`)).runningTimers).toEqual([
      { netSeconds: 16 * 3600 },
    ]);
    api.nowMs += 1000;
    expect((await api.ask(`{ runningTimers { netSeconds } }`)).runningTimers).toEqual([
      { netSeconds: null },
    ]);
    const asked = await timer('stopTimer');
    expect(asked.session).toBeNull();
    expect(asked.problems).toEqual([
      expect.objectContaining({
        code: 'INVALID',
        path: ['endedAt'],
        message: expect.stringContaining('Say when the work ended'),
      }),
    ]);
    const future = await timer('stopTimer', { endedAt: at(minuteMs) });
    expect(future.problems[0].path).toEqual(['endedAt']);
    const endedAt = new Date(Date.parse(start) + 3 * hourMs).toISOString();
    expect((await timer('stopTimer', { endedAt })).session).toMatchObject({
      endedAt,
      netSeconds: 3 * 3600,
    });
  });

  it('refuses a stop before the start, and a clock that went backwards', async () => {
    await timer('startTimer', { itemId: story.rigId });
    const early = await timer('stopTimer', { endedAt: at(-minuteMs) });
    expect(early.problems[0]).toMatchObject({ code: 'INVALID', path: ['endedAt'] });
    api.nowMs -= 10 * minuteMs;
    const back = await timer('stopTimer');
    expect(back.problems[0].message).toContain('was it set back?');
    expect((await timer('takeBreak')).problems[0].message).toContain('Set the clock');
    api.nowMs += 20 * minuteMs;
    expect((await timer('stopTimer')).session.netSeconds).toBe(600);
  });

  it('has nothing to stop when no timer runs', async () => {
    expect((await timer('stopTimer')).problems).toEqual([
      {
        code: 'CONFLICT',
        message: 'No timer of Ilse is running. Record the session instead.',
        path: ['personId'],
      },
    ]);
  });

  it('starts on nothing that is done, and not in the future', async () => {
    const projectId = await story.project('Closed');
    const [taskId] = await story.tasks(projectId, [{ title: 'Lamps' }]);
    await api.ask(`mutation ($id: ID!) { finishTask(input: { id: $id }) { problems { code } } }`, {
      id: taskId,
    });
    const done = await timer('startTimer', { taskId, startedAt: at(hourMs) });
    expect(pathsOf(done)).toEqual(['startedAt', 'taskId']);
    const nothing = await timer('startTimer', {});
    expect(nothing.problems[0].path).toEqual(['itemId']);
  });

  it('corrects the start of a running timer, and hands it to nobody whose timer runs', async () => {
    const { session } = await timer('startTimer', { itemId: story.rigId });
    await timer('startTimer', { personId: story.helperId, itemId: story.rigId });
    const earlier = at(-5 * minuteMs);
    const corrected = await timer('correctSession', {
      id: session.id,
      version: 1,
      startedAt: earlier,
    });
    expect(corrected.session).toMatchObject({ version: 2, startedAt: earlier, endedAt: null });
    const given = await timer('correctSession', {
      id: session.id,
      version: 2,
      personId: story.helperId,
    });
    expect(given.problems[0].message).toContain('A timer of Bruno has been running');
  });

  it('shows the hazards that stand before the work begins', async () => {
    const raised = await api.ask(
      `mutation ($input: RaiseHazardInput!) { raiseHazard(input: $input) { hazard { id } problems { message } } }`,
      {
        input: { itemId: story.otherRigId, kind: 'STORED_CHARGE', note: 'Main filter' },
      },
    );
    expect(raised.raiseHazard.problems).toEqual([]);
    const { startTimer } = await api.ask(
      `mutation ($input: StartTimerInput!) {
        startTimer(input: $input) { hazards { kind note cautions } session { id } }
      }`,
      { input: { itemId: story.otherRigId } },
    );
    expect(startTimer.hazards).toEqual([
      { kind: 'STORED_CHARGE', note: 'Main filter', cautions: expect.any(Array) },
    ]);
    expect(startTimer.hazards[0].cautions.length).toBeGreaterThan(0);
  });
});
