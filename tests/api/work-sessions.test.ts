import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { splitGlobalId } from '../../src/api/kit/globalId.js';
import { insertRows } from '../../src/db/insertRow.js';
import { WorkSessionEntity } from '../../src/features/work/workSession.entity.js';
import { pathsOf, shedStory, type ShedStory } from '../support/shedStory.js';
import { testApi, type TestApi } from '../support/testApi.js';

const correct = `mutation ($input: CorrectSessionInput!) {
  correctSession(input: $input) {
    session {
      id version startedAt endedAt note netSeconds item { id } task { id }
      breaks { startedAt endedAt } overlaps { seconds session { id } }
    }
    overlaps { seconds session { id } } problems { code message path }
  }
}`;

describe.each(['sqlite', 'postgres'] as const)('work sessions on %s', (engine) => {
  let api: TestApi;
  let story: ShedStory;
  beforeAll(async () => {
    api = await testApi(engine);
    story = await shedStory(api);
  });
  afterAll(() => api?.close());

  const on = (day: string) => (from: string, to: string) => ({
    startedAt: `2026-${day}T${from}:00.000Z`,
    endedAt: `2026-${day}T${to}:00.000Z`,
  });
  const correctSession = async (input: object) =>
    (await api.ask(correct, { input })).correctSession;
  const recordOf = (id: string) => splitGlobalId(id)!.id;

  it('records time on a task, which begins the task and its project', async () => {
    const projectId = await story.project('Late entry');
    const [taskId] = await story.tasks(projectId, [{ title: 'Clean' }]);
    const times = on('03-01');
    const { session, overlaps, problems } = await story.session({
      taskId,
      ...times('23:30', '23:59'),
      breaks: [times('23:40', '23:45')],
      note: ' Tar on the dial. ',
    });
    expect(problems).toEqual([]);
    expect(overlaps).toEqual([]);
    expect(session).toMatchObject({
      version: 1,
      zone: 'Europe/Berlin',
      person: { name: 'Ilse' },
      netSeconds: 24 * 60,
      note: 'Tar on the dial.',
      breaks: [times('23:40', '23:45')],
    });
    // In Berlin it is the next day by then.
    expect(session.task).toMatchObject({
      status: 'IN_PROGRESS',
      startedAt: '2026-03-01T23:30:00.000Z',
      project: { status: 'ACTIVE', startedOn: '2026-03-02' },
    });
  });

  it('names everything that is wrong with a session at once', async () => {
    const times = on('03-02');
    const refused = await story.session({
      itemId: story.rigId,
      taskId: story.rigId,
      startedAt: '2026-03-02T12:00:00Z',
      endedAt: '2026-03-02T11:00:00Z',
      breaks: [times('10:00', '10:30')],
    });
    expect(refused.session).toBeNull();
    expect(new Set(pathsOf(refused))).toEqual(new Set(['breaks.0.startedAt', 'endedAt', 'taskId']));
  });

  it('asks whether a session of more than a day is meant, and takes none of more than a week', async () => {
    const input = {
      itemId: story.otherRigId,
      personId: story.helperId,
      startedAt: '2026-02-01T00:00:00Z',
      endedAt: '2026-02-02T00:00:01Z',
    };
    const asked = await story.session(input);
    expect(asked.problems).toEqual([
      expect.objectContaining({ code: 'INVALID', path: ['endedAt'] }),
    ]);
    expect(asked.problems[0].message).toContain('isLongSessionMeant: true');
    const meant = await story.session({ ...input, isLongSessionMeant: true });
    expect(meant.session.netSeconds).toBe(86_401);
    const week = { ...input, endedAt: '2026-02-08T00:00:01Z', isLongSessionMeant: true };
    expect((await story.session(week)).problems[0].message).toContain('7 days');
  });

  it('refuses a task of another item, an organisation, and an unknown person', async () => {
    const [taskId] = await story.tasks(await story.project('Mine'), [{ title: 'Clean' }]);
    const times = on('03-03')('10:00', '11:00');
    const { problems } = await story.session({ itemId: story.otherRigId, taskId, ...times });
    expect(problems).toEqual([expect.objectContaining({ code: 'INVALID', path: ['itemId'] })]);
    const nobody = 'Party_00000000-0000-7000-8000-000000000000';
    const unknown = await story.session({ itemId: story.rigId, personId: nobody, ...times });
    expect(unknown.problems).toEqual([
      expect.objectContaining({ code: 'NOT_FOUND', path: ['personId'] }),
    ]);
  });

  it('records sessions of one person that overlap, and reports for how long', async () => {
    const times = on('04-01');
    const first = await story.session({ itemId: story.rigId, ...times('10:00', '12:00') });
    const second = await story.session({
      itemId: story.otherRigId,
      ...times('11:00', '13:00'),
      breaks: [times('11:00', '11:15')],
    });
    expect(second.problems).toEqual([]);
    expect(second.overlaps).toEqual([{ seconds: 45 * 60, session: { id: first.session.id } }]);
    const helper = await story.session({
      personId: story.helperId,
      itemId: story.rigId,
      ...times('10:30', '11:30'),
    });
    expect(helper.overlaps).toEqual([]);
    const { workSessions } = await api.ask(
      `query ($filter: WorkSessionFilter) { workSessions(filter: $filter) {
        totalCount nodes { id overlaps { seconds session { id item { inventoryNumber } } } } } }`,
      {
        filter: {
          personId: story.personId,
          from: '2026-04-01T00:00:00Z',
          to: '2026-04-02T00:00:00Z',
        },
      },
    );
    expect(workSessions).toEqual({
      totalCount: 2,
      nodes: [
        {
          id: second.session.id,
          overlaps: [
            {
              seconds: 2700,
              session: { id: first.session.id, item: { inventoryNumber: 'R-001' } },
            },
          ],
        },
        {
          id: first.session.id,
          overlaps: [
            {
              seconds: 2700,
              session: { id: second.session.id, item: { inventoryNumber: 'R-002' } },
            },
          ],
        },
      ],
    });
  });

  it('corrects a session, and the history keeps what it was', async () => {
    const times = on('05-01');
    const [taskId] = await story.tasks(await story.project('Right one', story.otherRigId), [
      { title: 'Align' },
    ]);
    const { session } = await story.session({ itemId: story.rigId, ...times('10:00', '12:00') });
    const { id } = session;
    const corrected = await correctSession({
      id,
      version: 1,
      taskId,
      endedAt: '2026-05-01T11:30:00Z',
      breaks: [times('10:30', '10:40'), times('10:10', '10:20')],
    });
    expect(corrected.problems).toEqual([]);
    expect(corrected.session).toMatchObject({
      version: 2,
      item: { id: story.otherRigId },
      task: { id: taskId },
      netSeconds: 70 * 60,
      breaks: [times('10:10', '10:20'), times('10:30', '10:40')],
    });
    // Only a break changes: a version of its own all the same.
    const fewer = await correctSession({ id, version: 2, breaks: [times('10:10', '10:25')] });
    expect(fewer.session).toMatchObject({ version: 3, netSeconds: 75 * 60 });
    expect(fewer.session.breaks).toEqual([times('10:10', '10:25')]);
    const late = await correctSession({ id, version: 2, breaks: [] });
    expect(late.problems[0].code).toBe('OUT_OF_DATE');
    const wrong = await correctSession({ id, version: 3, endedAt: '2026-05-01T10:20:00Z' });
    expect(wrong.problems[0].path).toEqual(['breaks', '0', 'endedAt']);
    const kept = await api.database.reader.rows<{ before: string }>(
      `SELECT before AS "before" FROM change
       WHERE record_table = 'work_session' AND record_id = ? AND before IS NOT NULL ORDER BY id`,
      [recordOf(id)],
    );
    expect(kept.map(({ before }) => JSON.parse(before).endedAt)).toEqual([
      '2026-05-01T12:00:00.000Z',
      '2026-05-01T11:30:00.000Z',
    ]);
  });

  it('lets one of two corrections made at the same moment through', async () => {
    const { session } = await story.session({
      itemId: story.rigId,
      ...on('05-02')('10:00', '12:00'),
    });
    const answers = await Promise.all(
      ['One', 'Two'].map((note) => correctSession({ id: session.id, version: 1, note })),
    );
    expect(answers.filter((answer) => answer.session !== null)).toHaveLength(1);
    expect(answers.flatMap(({ problems }) => problems)[0].code).toBe('OUT_OF_DATE');
  });

  it('pages sessions below items and tasks, at a fixed number of statements', async () => {
    const [taskId] = await story.tasks(await story.project('Paged', story.otherRigId), [
      { title: 'Mend' },
    ]);
    for (const hour of ['08', '09', '10', '11', '12']) {
      const times = on('05-10')(`${hour}:00`, `${hour}:50`);
      expect((await story.session({ taskId, ...times })).problems).toEqual([]);
    }
    const page = `query ($id: ID!, $first: Int!, $after: String) { node(id: $id) { ... on Task {
      sessions(first: $first, after: $after) {
        totalCount pageInfo { hasNextPage endCursor }
        nodes { startedAt netSeconds breaks { id } overlaps { seconds } person { name } item { id } task { id } }
      } } } }`;
    const hours: number[] = [];
    let after: string | null = null;
    for (let more = true; more;) {
      const answer: any = await api.ask(page, { id: taskId, first: 2, after });
      const { sessions } = answer.node;
      expect(sessions.totalCount).toBe(5);
      for (const { startedAt } of sessions.nodes) hours.push(new Date(startedAt).getUTCHours());
      ({ hasNextPage: more, endCursor: after } = sessions.pageInfo);
    }
    expect(hours).toEqual([12, 11, 10, 9, 8]);
    const count = async (first: number) => {
      const before = api.statements();
      await api.ask(page, { id: taskId, first });
      return api.statements() - before;
    };
    expect(await count(5)).toBe(await count(1));
    const { node } = await api.ask(
      `query ($id: ID!) { node(id: $id) { ... on Rig { sessions(first: 1) { nodes { startedAt } } } } }`,
      { id: story.otherRigId },
    );
    expect(node.sessions.nodes).toEqual([{ startedAt: '2026-05-10T12:00:00.000Z' }]);
  });

  it('says when more sessions overlap than can be listed, and counts their time once all the same', async () => {
    const act = { action: 'bringIn', actorId: null, now: new Date(api.nowMs).toISOString() };
    const same = {
      personId: recordOf(story.helperId),
      itemId: recordOf(story.rigId),
      taskId: null,
      ...on('05-20')('10:00', '11:00'),
      zone: 'Europe/Berlin',
      note: null,
    };
    // 150 sessions are 11,175 pairs; 10,000 are listed.
    const brought = await api.database.write(act, (work) =>
      insertRows(
        work,
        WorkSessionEntity,
        Array.from({ length: 150 }, () => same),
      ),
    );
    const asked = async (id: string) =>
      (
        await api.ask(
          'query ($id: ID!) { node(id: $id) { ... on WorkSession { areOverlapsComplete netSeconds } } }',
          { id },
        )
      ).node;
    expect(await asked(`WorkSession_${brought[0]?.id ?? ''}`)).toEqual({
      areOverlapsComplete: false,
      netSeconds: 3600,
    });
    const alone = await story.session({ itemId: story.rigId, ...on('05-22')('10:00', '11:00') });
    expect(await asked(alone.session.id)).toMatchObject({ areOverlapsComplete: true });
  });
});
