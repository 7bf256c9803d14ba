import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { globalId } from '../../src/api/kit/globalId.js';
import { keepFile } from '../../src/features/attachments/keepFile.js';
import { carried } from '../support/carried.js';
import { shedStory, type ShedStory } from '../support/shedStory.js';
import { testApi, type TestApi } from '../support/testApi.js';

describe.each(['sqlite', 'postgres'] as const)('percent complete on %s', (engine) => {
  let api: TestApi;
  let story: ShedStory;
  let taskId: string;
  beforeAll(async () => {
    api = await testApi(engine);
    story = await shedStory(api);
    const projectId = await story.project('Alignment');
    [taskId = ''] = await story.tasks(projectId, [
      { title: 'Align', rule: 'PERCENT_WITH_EVIDENCE' },
    ]);
  });
  afterAll(() => api?.close());

  const readingOf = async (itemId: string): Promise<string> => {
    const reading = {
      itemId,
      quantity: 'sensitivity',
      value: '1.2',
      unit: 'uV',
      tier: 'IN_CIRCUIT',
      takenAt: '2026-05-10T10:00:00Z',
    };
    const [kept] = await carried(api, 'recordReadings', { readings: [reading] }, 'readings');
    return kept.id;
  };
  const state = async (input: object) =>
    (
      await api.ask(
        `mutation ($input: StatePercentInput!) { statePercent(input: $input) {
          task { evidence { kind note reading { id quantity } photograph { id caption } } } problems { message path } } }`,
        { input: { id: taskId, ...input } },
      )
    ).statePercent;
  const share = async () =>
    (
      await api.ask('query ($id: ID!) { node(id: $id) { ... on Rig { completion { share } } } }', {
        id: story.rigId,
      })
    ).node.completion.share;

  it('is shown by a reading of the item, and then earns', async () => {
    const readingId = await readingOf(story.rigId);
    const { task, problems } = await state({ version: 1, percent: 40, readingId });
    expect(problems).toEqual([]);
    expect(task.evidence).toEqual({
      kind: 'READING',
      note: null,
      reading: { id: readingId, quantity: 'sensitivity' },
      photograph: null,
    });
    expect(await share()).toBeCloseTo(0.4, 6);
  });

  it('is shown by a note', async () => {
    const { task } = await state({ version: 2, percent: 60, evidence: 'Three of five bands' });
    expect(task.evidence).toEqual({
      kind: 'NOTE',
      note: 'Three of five bands',
      reading: null,
      photograph: null,
    });
  });

  it('needs one of them, and not the reading of another set', async () => {
    expect((await state({ version: 3, percent: 80 })).problems).toEqual([
      { message: expect.stringContaining('Say what shows it'), path: ['evidence'] },
    ]);
    const foreign = await readingOf(story.otherRigId);
    expect((await state({ version: 3, percent: 80, readingId: foreign })).problems).toEqual([
      { message: expect.stringContaining('no such reading'), path: ['readingId'] },
    ]);
    expect(await share()).toBeCloseTo(0.6, 6);
  });

  it('is shown by a photograph of the set, and not by one of another set', async () => {
    const act = { action: 'story', actorId: null, now: '2026-05-10T12:00:00.000Z' };
    const kept = await api.database.write(act, (work) =>
      keepFile(work, {
        digest: 'a'.repeat(64),
        byteLength: 10,
        mediaType: 'image/jpeg',
        originalName: 'coils.jpg',
        widthPixels: 120,
        heightPixels: 80,
        takenAt: null,
      }),
    );
    const fileId = globalId('StoredFile', kept);
    const attached = async (toId: string): Promise<string> => {
      const input = { fileId, toId, caption: 'Coils trimmed and sealed' };
      return (await carried(api, 'attachFile', input, 'attachment')).id;
    };
    const foreign = await attached(story.otherRigId);
    expect((await state({ version: 3, percent: 80, attachmentId: foreign })).problems).toEqual([
      { message: expect.stringContaining('no such photograph'), path: ['attachmentId'] },
    ]);
    const attachmentId = await attached(story.rigId);
    const { task, problems } = await state({ version: 3, percent: 80, attachmentId });
    expect(problems).toEqual([]);
    expect(task.evidence).toEqual({
      kind: 'PHOTOGRAPH',
      note: null,
      reading: null,
      photograph: { id: attachmentId, caption: 'Coils trimmed and sealed' },
    });
    expect(await share()).toBeCloseTo(0.8, 6);
  });
});
