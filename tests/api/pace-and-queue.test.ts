import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { carried } from '../support/carried.js';
import { pathsOf, shedStory, type ShedStory } from '../support/shedStory.js';
import { testApi, type TestApi } from '../support/testApi.js';

describe.each(['sqlite', 'postgres'] as const)('pace and queue on %s', (engine) => {
  let api: TestApi;
  let story: ShedStory;
  let projects: string[];
  beforeAll(async () => {
    api = await testApi(engine);
    story = await shedStory(api);
    projects = [];
    for (const title of ['Alpha', 'Beta', 'Gamma']) {
      const id = await story.project(title);
      projects.push(id);
      const flat = { optimisticHours: 4, likelyHours: 4, pessimisticHours: 4 };
      await story.tasks(id, [{ title: `${title} work`, estimate: flat }]);
    }
  });
  afterAll(() => api?.close());

  const queue = async (movedUpId: string | null = null) =>
    (
      await api.ask(
        `query ($movedUpId: ID) { workQueue(movedUpId: $movedUpId) {
          person { name }
          projects { place p50Hours p80Hours p50On p80On project { title } }
          ifMovedUp { place p50On p80On p50DaysLater p80DaysLater project { title } }
          basis { assumptions counted { what count } }
        } }`,
        { movedUpId },
      )
    ).workQueue;
  const titles = (told: any) => told.projects.map((each: any) => each.project.title);
  const pace = async () =>
    (
      await api.ask(
        `{ pace { person { name } meanHoursPerWeek medianHoursPerWeek idleWeeks awayWeeks
            weeks { mondayOn hours awayDays } away { id version fromOn untilOn isYearly note } } }`,
      )
    ).pace;
  const forecast = async (id: string) =>
    (
      await api.ask(
        `query ($id: ID!) { node(id: $id) { ... on Project { forecast {
          finish { p50On p80On p95On }
          weeksAhead { on finishedShare p80DoneShare p50DoneShare p20DoneShare }
        } } } }`,
        { id },
      )
    ).node.forecast;
  const day = (date: string, from: string, to: string) =>
    story.session({
      personId: story.personId,
      itemId: story.otherRigId,
      startedAt: `${date}T${from}:00Z`,
      endedAt: `${date}T${to}:00Z`,
    });

  it('knows no pace and no date before there is a week of work', async () => {
    expect(await pace()).toMatchObject({ meanHoursPerWeek: null, weeks: [], away: [] });
    const told = await queue();
    expect(titles(told)).toEqual(['Alpha', 'Beta', 'Gamma']);
    expect(told.projects[0]).toMatchObject({ place: 1, p50Hours: 4, p50On: null });
    expect(await forecast(projects[0]!)).toEqual({ finish: null, weeksAhead: [] });
  });

  it('takes the pace from the weeks really kept, idle ones too', async () => {
    // The clock stands at Monday 2026-06-01. Four weeks: 4, 0, 4 and 0 hours, one session twice.
    await day('2026-05-05', '08:00', '12:00');
    await day('2026-05-05', '09:00', '11:00');
    await day('2026-05-19', '08:00', '12:00');
    expect(await pace()).toMatchObject({
      person: { name: 'Ilse' },
      meanHoursPerWeek: 2,
      medianHoursPerWeek: 2,
      idleWeeks: 2,
      awayWeeks: 0,
      weeks: [
        { mondayOn: '2026-05-04', hours: 4, awayDays: 0 },
        { mondayOn: '2026-05-11', hours: 0, awayDays: 0 },
        { mondayOn: '2026-05-18', hours: 4, awayDays: 0 },
        { mondayOn: '2026-05-25', hours: 0, awayDays: 0 },
      ],
    });
  });

  it('gives each project its dates, one after the other', async () => {
    const told = await queue();
    const dates = told.projects.map((each: any) => each.p80On);
    expect([...dates].sort()).toEqual(dates);
    expect(new Set(dates).size).toBe(3);
    for (const each of told.projects) expect(each.p50On <= each.p80On).toBe(true);
    const { finish } = await forecast(projects[0]!);
    expect(finish.p50On <= finish.p80On).toBe(true);
  });

  it('says how far each may be in the weeks ahead, in the same trials as the dates', async () => {
    const { finish, weeksAhead } = await forecast(projects[0]!);
    expect(weeksAhead[0]).toEqual({
      on: '2026-06-01',
      finishedShare: 0,
      p80DoneShare: 0,
      p50DoneShare: 0,
      p20DoneShare: 0,
    });
    const firstWith = (isSo: (week: any) => boolean) => weeksAhead.find(isSo).on;
    const weekOf = (day: string) => weeksAhead.find((week: any) => week.on >= day).on;
    expect(firstWith((week) => week.p80DoneShare === 1)).toBe(weekOf(finish.p80On));
    expect(firstWith((week) => week.finishedShare >= 0.8)).toBe(weekOf(finish.p80On));
    expect(firstWith((week) => week.p50DoneShare === 1)).toBe(weekOf(finish.p50On));
    expect(weeksAhead.at(-1).on).toBe(weekOf(finish.p95On));
    expect(await forecast(projects[0]!)).toEqual({ finish, weeksAhead });
  });

  it('shows what moving one up does to the others before it is done', async () => {
    const told = await queue(projects[2]);
    const after = Object.fromEntries(told.ifMovedUp.map((each: any) => [each.project.title, each]));
    expect(after['Gamma']).toMatchObject({ place: 2 });
    expect(after['Gamma'].p80DaysLater).toBeLessThan(0);
    expect(after['Beta'].p80DaysLater).toBeGreaterThan(0);
    expect(after['Alpha'].p80DaysLater).toBe(0);
    // The last of the queue is done on the same day, whoever it is.
    expect(after['Beta'].p80On).toBe(told.projects[2].p80On);
    expect(titles(await queue())).toEqual(['Alpha', 'Beta', 'Gamma']);
  });

  it('moves projects, and keeps the order when two move at once', async () => {
    const up = (id: string) =>
      carried(api, 'moveProjectUp', { projectId: id }, 'project', '{ title }');
    await up(projects[2]!);
    expect(titles(await queue())).toEqual(['Alpha', 'Gamma', 'Beta']);
    await Promise.all([up(projects[1]!), up(projects[2]!)]);
    const order = titles(await queue());
    expect([...order].sort()).toEqual(['Alpha', 'Beta', 'Gamma']);
    const place = (id: string, at: number) =>
      carried(
        api,
        'setProjectPriority',
        { projectId: id, place: at },
        'project',
        '{ plan { priority } }',
      );
    expect(await place(projects[0]!, 3)).toEqual({ plan: { priority: 3 } });
    expect(titles(await queue())[2]).toBe('Alpha');
  });

  it('refuses a place that is none, the first moving up, and a project that does not wait', async () => {
    const refused = async (mutation: string, type: string, input: object) => {
      const data = await api.ask(
        `mutation ($input: ${type}!) { ${mutation}(input: $input) { problems { message path } } }`,
        { input },
      );
      return data[mutation].problems;
    };
    expect(
      await refused('setProjectPriority', 'SetProjectPriorityInput', {
        projectId: projects[0],
        place: 4,
      }),
    ).toEqual([
      {
        message: 'Give a place from 1 to 3: so many projects wait for the same person.',
        path: ['place'],
      },
    ]);
    const [first] = (await api.ask('{ workQueue { projects { project { id } } } }')).workQueue
      .projects;
    const [problem] = await refused('moveProjectUp', 'MoveProjectUpInput', {
      projectId: first.project.id,
    });
    expect(problem.message).toMatch(/first already/);
    const deferred = await story.project('Deferred');
    await carried(
      api,
      'setProjectStatus',
      { id: deferred, version: 1, status: 'DEFERRED' },
      'project',
    );
    const [waits] = await refused('moveProjectUp', 'MoveProjectUpInput', { projectId: deferred });
    expect(waits.message).toMatch(/“Deferred” is deferred/);
    const { errors } = await api.tryToAsk(
      `query ($id: ID) { workQueue(movedUpId: $id) { projects { place } } }`,
      { id: deferred },
    );
    expect(errors?.[0]?.message).toMatch(/does not wait for this person/);
  });

  it('puts days away on the calendar, takes them back, and refuses days out of order', async () => {
    const before = (await queue()).projects[2].p80On as string;
    const away = await carried(
      api,
      'declareAway',
      { fromOn: '2026-06-08', untilOn: '2026-07-12', note: 'The sea' },
      'away',
      '{ id version isYearly person { name } }',
    );
    expect(away).toMatchObject({ version: 1, isYearly: false, person: { name: 'Ilse' } });
    expect((await queue()).projects[2].p80On > before).toBe(true);
    expect((await pace()).away).toMatchObject([{ fromOn: '2026-06-08', note: 'The sea' }]);
    await carried(api, 'changeAway', { id: away.id, version: 1, isWithdrawn: true }, 'away');
    expect((await queue()).projects[2].p80On).toBe(before);
    // A season away in the past is no idle week.
    await carried(
      api,
      'declareAway',
      { fromOn: '2025-05-11', untilOn: '2025-05-17', isYearly: true },
      'away',
    );
    expect(await pace()).toMatchObject({ awayWeeks: 1, idleWeeks: 1 });
    const { declareAway } = await api.ask(
      `mutation ($input: DeclareAwayInput!) { declareAway(input: $input) { problems { path } } }`,
      { input: { personId: story.rigId, fromOn: '2026-07-02', untilOn: '2026-07-01' } },
    );
    expect(pathsOf(declareAway)).toEqual(['personId', 'untilOn']);
  });
});
