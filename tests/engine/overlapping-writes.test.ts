import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { shedStory } from '../support/shedStory.js';
import { testApi, type TestApi } from '../support/testApi.js';

const mutationCount = 200;
const estimate = { optimisticHours: 1, likelyHours: 2, pessimisticHours: 3 };

const createPlace = `mutation ($input: CreatePlaceInput!) {
  createPlace(input: $input) { place { name } problems { code } }
}`;
const addTasks = `mutation ($input: AddTasksInput!) {
  addTasks(input: $input) { tasks { title } problems { code } }
}`;

/** What one mutation was told to write, and what came back. */
interface Sent {
  name: string;
  isMeantToFail: boolean;
  answer: 'acknowledged' | 'refused' | 'failed';
}

describe.each(['sqlite', 'postgres'] as const)('200 overlapping mutations on %s', (engine) => {
  let api: TestApi;
  let sent: Sent[];
  let mostAtOnce = 0;

  beforeAll(async () => {
    api = await testApi(engine);
    const story = await shedStory(api);
    const projectId = await story.project('Everyone at once');
    breakSomeUnitsOfWork(api);
    let open = 0;
    const during = async <Result>(asked: Promise<Result>): Promise<Result> => {
      mostAtOnce = Math.max(mostAtOnce, ++open);
      return asked.finally(() => open--);
    };
    sent = await Promise.all(
      Array.from({ length: mutationCount }, (_, n) => during(send(api, projectId, n))),
    );
  }, 120_000);
  afterAll(() => api?.close());

  it('were all open at the same time', () => {
    expect(mostAtOnce).toBe(mutationCount);
  });

  it('fail where they are meant to, a tenth of them, and nowhere else', () => {
    const failed = sent.filter(({ answer }) => answer !== 'acknowledged');
    expect(failed).toHaveLength(mutationCount / 10);
    expect(failed.every(({ isMeantToFail }) => isMeantToFail)).toBe(true);
    expect(new Set(failed.map(({ answer }) => answer))).toEqual(new Set(['refused', 'failed']));
  });

  it('leave every acknowledged write in the records, and nothing of a failed one', async () => {
    const { rows } = api.database.reader;
    const kept = await rows<{ name: string }>(
      `SELECT name AS "name" FROM place UNION ALL SELECT title AS "name" FROM task`,
    );
    const acknowledged = sent.filter(({ answer }) => answer === 'acknowledged');
    expect(kept.map(({ name }) => name).sort()).toEqual(
      acknowledged.map(({ name }) => name).sort(),
    );
  });

  it('leave one entry in the history for each write that was kept', async () => {
    const { rows } = api.database.reader;
    const changes = await rows<{ recordId: string }>(
      `SELECT record_id AS "recordId" FROM change WHERE record_table IN ('place', 'task')`,
    );
    const kept = await rows<{ id: string }>(
      `SELECT id AS "id" FROM place UNION ALL SELECT id AS "id" FROM task`,
    );
    expect(changes.map(({ recordId }) => recordId).sort()).toEqual(kept.map(({ id }) => id).sort());
  });

  it('give each task a place of its own in the list', async () => {
    const { rows } = api.database.reader;
    const tasks = await rows<{ ordinal: number }>(
      `SELECT ordinal AS "ordinal" FROM task ORDER BY ordinal`,
    );
    expect(tasks.length).toBeGreaterThan(0);
    expect(tasks.map(({ ordinal }) => ordinal)).toEqual(tasks.map((_, index) => index + 1));
  });
});

/** Throws after the rows are written, still inside the transaction, wherever a name asks for it. */
function breakSomeUnitsOfWork(api: TestApi): void {
  const { database } = api;
  const { write } = database;
  database.write = (act, fn) =>
    write(act, async (work) => {
      const result = await fn(work);
      const isToBreak = work.writes.some(({ after }) =>
        [after?.['name'], after?.['title']].some((text) => String(text).startsWith('Broken')),
      );
      if (isToBreak) throw new Error('broken on purpose');
      return result;
    });
}

/** Every tenth fails: by a refusal after its rows are written, or by a throw after that. */
async function send(api: TestApi, projectId: string, n: number): Promise<Sent> {
  const isMeantToFail = n % 10 === 4;
  const isTask = n % 4 === 0;
  const isRefused = isMeantToFail && isTask;
  const name = `${isMeantToFail && !isRefused ? 'Broken' : 'Kept'} ${n}`;
  const task = { title: name, estimate, ...(isRefused && { predecessorPositions: [0] }) };
  const { data, errors } = isTask
    ? await api.tryToAsk(addTasks, { input: { projectId, tasks: [task] } })
    : await api.tryToAsk(createPlace, { input: { name } });
  const payload = (data?.['addTasks'] ?? data?.['createPlace']) as
    { problems: unknown[] } | undefined;
  const answer = errors ? 'failed' : payload?.problems.length ? 'refused' : 'acknowledged';
  return { name, isMeantToFail, answer };
}
