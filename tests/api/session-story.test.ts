import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { carried } from '../support/carried.js';
import { shedStory, type ShedStory } from '../support/shedStory.js';
import { testApi, type TestApi } from '../support/testApi.js';

const versions = `{ workSessions(first: 1) { nodes { version startedAt endedAt note breaks { startedAt }
  earlierVersions { version startedAt endedAt note replacedBy breaks { startedAt endedAt } } } } }`;

describe.each(['sqlite', 'postgres'] as const)('the story of a session on %s', (engine) => {
  let api: TestApi;
  let story: ShedStory;
  beforeAll(async () => {
    api = await testApi(engine);
    story = await shedStory(api);
  });
  afterAll(() => api?.close());

  it('keeps what it said before a correction readable, breaks and all', async () => {
    const pause = { startedAt: '2026-05-10T09:00:00.000Z', endedAt: '2026-05-10T09:10:00.000Z' };
    const { session } = await story.session({
      itemId: story.rigId,
      startedAt: '2026-05-10T08:00:00Z',
      endedAt: '2026-05-10T10:00:00Z',
      breaks: [pause],
      note: 'Dial',
    });
    api.nowMs += 60_000;
    const corrected = {
      id: session.id,
      version: 1,
      endedAt: '2026-05-10T11:00:00Z',
      note: 'Dial, and lamps',
      breaks: [],
    };
    await carried(api, 'correctSession', corrected, 'session');
    api.nowMs += 60_000;
    const again = { id: session.id, version: 2, startedAt: '2026-05-10T08:30:00Z' };
    await carried(api, 'correctSession', again, 'session');
    const { workSessions } = await api.ask(versions);
    expect(workSessions.nodes).toEqual([
      {
        version: 3,
        startedAt: '2026-05-10T08:30:00.000Z',
        endedAt: '2026-05-10T11:00:00.000Z',
        note: 'Dial, and lamps',
        breaks: [],
        earlierVersions: [
          {
            version: 2,
            startedAt: '2026-05-10T08:00:00.000Z',
            endedAt: '2026-05-10T11:00:00.000Z',
            note: 'Dial, and lamps',
            replacedBy: 'correctSession',
            breaks: [],
          },
          {
            version: 1,
            startedAt: '2026-05-10T08:00:00.000Z',
            endedAt: '2026-05-10T10:00:00.000Z',
            note: 'Dial',
            replacedBy: 'correctSession',
            breaks: [pause],
          },
        ],
      },
    ]);
  });

  it('asks about a timer left running overnight, and counts nothing of it until it is told', async () => {
    await carried(api, 'startTimer', { itemId: story.rigId }, 'session');
    const asked = async () =>
      (await api.ask('{ runningTimers { endQuestion netSeconds } }')).runningTimers;
    expect(await asked()).toEqual([{ endQuestion: null, netSeconds: 0 }]);
    const worked = new Date(api.nowMs + 2 * 3_600_000).toISOString();
    api.nowMs += 17 * 3_600_000;
    expect(await asked()).toEqual([
      { endQuestion: expect.stringContaining('Say when the work ended'), netSeconds: null },
    ]);
    const stopped = await carried(
      api,
      'stopTimer',
      { endedAt: worked },
      'session',
      '{ netSeconds endQuestion }',
    );
    expect(stopped).toEqual({ netSeconds: 7200, endQuestion: null });
  });
});
