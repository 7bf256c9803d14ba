import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { newRig, record, send } from '../support/lotStory.js';
import { testApi, type TestApi } from '../support/testApi.js';

describe.each(['sqlite', 'postgres'] as const)('what tells an item apart, on %s', (engine) => {
  let api: TestApi;
  beforeAll(async () => {
    api = await testApi(engine);
  });
  afterAll(() => api.close());

  const rig = async (more: object = {}) =>
    (await record(api, { lines: [newRig(more)] })).lines[0].item.id as string;
  const sheetOf = async (id: string) =>
    (
      await api.ask(
        `query ($id: ID!) { node(id: $id) { ... on Item { objectId { version isComplete missing
          answers { category answer source } inventoryNumber documentedAt basis { counted { what count } } } } } }`,
        { id },
      )
    ).node.objectId;
  const identify = (input: object) =>
    send(api, 'identifyItem', 'item', 'objectId { version missing isComplete }', input) as any;

  // Categories: ICOM, Object ID standard, the nine categories in their order.
  it('answers the nine categories of Object ID, from other records where nothing was written', async () => {
    const id = await rig({ name: 'The blue one', serialNumber: '4711' });
    const before = await sheetOf(id);
    expect((before.answers as any[]).map(({ category, source }) => [category, source])).toEqual([
      ['TYPE_OF_OBJECT', 'OTHER_RECORDS'],
      ['MATERIALS_AND_TECHNIQUES', 'MISSING'],
      ['MEASUREMENTS', 'MISSING'],
      ['INSCRIPTIONS_AND_MARKINGS', 'OTHER_RECORDS'],
      ['DISTINGUISHING_FEATURES', 'MISSING'],
      ['TITLE', 'OTHER_RECORDS'],
      ['SUBJECT', 'MISSING'],
      ['DATE_OR_PERIOD', 'MISSING'],
      ['MAKER', 'MISSING'],
    ]);
    expect(before.answers[3].answer).toBe('Serial number 4711.');
    expect(before).toMatchObject({ version: null, isComplete: false, documentedAt: null });

    await send(api, 'recordProvenanceEvent', 'provenanceEvent', 'id', {
      itemId: id,
      kind: 'MADE',
      dateEdtf: '1957~',
    });
    const { item, problems } = await identify({
      itemId: id,
      materials: 'Steel chassis, hammered grey lacquer',
      measurements: '430 × 250 × 300 mm, 18 kg',
      distinguishingFeatures: 'Second hole drilled beside the microphone jack.',
      maker: 'Alder & Finch',
      notApplicable: ['SUBJECT', 'SUBJECT'],
    });
    expect(problems).toEqual([]);
    expect(item.objectId).toEqual({ version: 1, missing: [], isComplete: true });
    const after = await sheetOf(id);
    expect(after.answers[7]).toEqual({
      category: 'DATE_OR_PERIOD',
      answer: '1957~',
      source: 'OTHER_RECORDS',
    });
    expect(after.answers[6]).toMatchObject({ answer: null, source: 'NOT_APPLICABLE' });
    expect(after.basis.counted[0]).toEqual({ what: 'categories answered', count: 9 });
  });

  it('keeps one sheet an item, twice at once too, and refuses what rests on an older one', async () => {
    const itemId = await rig();
    const both = await Promise.all([
      identify({ itemId, maker: 'Alder & Finch' }),
      identify({ itemId, maker: 'Another' }),
    ]);
    expect(both.map(({ problems }) => problems.length).sort()).toEqual([0, 1]);
    expect((await identify({ itemId, version: 7, title: 'X' })).problems[0].code).toBe(
      'OUT_OF_DATE',
    );
    const { item } = await identify({ itemId, version: 1, title: 'Desk set' });
    expect(item.objectId.version).toBe(2);
    expect(
      (await identify({ itemId, version: 2, materials: 'x'.repeat(10_001) })).problems,
    ).toEqual([expect.objectContaining({ path: ['materials'] })]);
  });
});
