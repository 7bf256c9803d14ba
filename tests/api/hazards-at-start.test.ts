import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { shedStory, type ShedStory } from '../support/shedStory.js';
import { testApi, type TestApi } from '../support/testApi.js';

describe.each(['sqlite', 'postgres'] as const)('hazards at the start of work on %s', (engine) => {
  let api: TestApi;
  let story: ShedStory;
  let itemId: string;
  beforeAll(async () => {
    api = await testApi(engine);
    story = await shedStory(api);
    itemId = story.rigId;
    for (const kind of ['ACID_CLEANER', 'RF_BURN']) {
      const { raiseHazard } = await api.ask(
        `mutation ($input: RaiseHazardInput!) { raiseHazard(input: $input) { problems { message } } }`,
        { input: { itemId, kind } },
      );
      expect(raiseHazard.problems).toEqual([]);
    }
  });
  afterAll(() => api?.close());

  const start = async (fields: string) => {
    const { startTimer } = await api.ask(
      `mutation ($input: StartTimerInput!) { startTimer(input: $input) { ${fields}
        session { id hazardsAtStart { isShown recordedAt hazard { kind cautions } } } problems { message } } }`,
      { input: { itemId } },
    );
    expect(startTimer.problems).toEqual([]);
    api.nowMs += 60_000;
    await api.ask(`mutation { stopTimer(input: {}) { problems { message } } }`);
    api.nowMs += 60_000;
    return startTimer;
  };

  it('are shown first, and it is written down that they were', async () => {
    const at = new Date(api.nowMs).toISOString();
    const { hazards, session } = await start('hazards { kind cautions }');
    expect(hazards.map(({ kind }: any) => kind).sort()).toEqual(['ACID_CLEANER', 'RF_BURN']);
    expect(session.hazardsAtStart.map(({ hazard }: any) => hazard.kind).sort()).toEqual([
      'ACID_CLEANER',
      'RF_BURN',
    ]);
    for (const noted of session.hazardsAtStart) {
      expect(noted).toMatchObject({ isShown: true, recordedAt: at });
    }
  });

  it('are written down as not shown when the answer did not carry them', async () => {
    const { session } = await start('');
    expect(session.hazardsAtStart.map(({ isShown }: any) => isShown)).toEqual([false, false]);
  });
});
