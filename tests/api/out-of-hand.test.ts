import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { money, newRig, record, send } from '../support/lotStory.js';
import { testApi, type TestApi } from '../support/testApi.js';

describe.each(['sqlite', 'postgres'] as const)('what is out of hand, on %s', (engine) => {
  let api: TestApi;
  beforeAll(async () => {
    api = await testApi(engine);
  });
  afterAll(() => api.close());

  const rigs = async (count = 1): Promise<string[]> =>
    (await record(api, { lines: Array.from({ length: count }, () => newRig()) })).lines.map(
      ({ item }) => item.id,
    );
  let people = 0;
  const lend = (itemId: string, more: object = {}): Promise<any> =>
    send(api, 'lendItem', 'loan', 'id version borrower { name }', {
      itemId,
      borrower: { name: `Club ${++people}` },
      lentOn: '2026-05-10',
      ...more,
    });
  const whereabouts = async (id: string) =>
    (
      await api.ask(
        `query ($id: ID!) { node(id: $id) { ... on Item { retiredAt
          whereabouts { state since dueOn overdueDays placeName with { name } } } } }`,
        { id },
      )
    ).node;

  it('says where a lent item is, until when, and by how much it is overdue', async () => {
    const [id = ''] = await rigs();
    expect((await whereabouts(id)).whereabouts).toMatchObject({ state: 'AT_HAND', since: null });
    const { loan } = await lend(id, { dueOn: '2026-05-20', placeName: 'Museum, room 4' });
    expect((await whereabouts(id)).whereabouts).toEqual({
      state: 'LENT',
      since: '2026-05-10',
      dueOn: '2026-05-20',
      overdueDays: 12,
      placeName: 'Museum, room 4',
      with: loan.borrower,
    });
    const { loans } = await api.ask(`{ loans(isOverdue: true) { nodes { item { id } } } }`);
    expect(loans.nodes).toEqual([{ item: { id } }]);
    const early: any = await send(api, 'changeLoan', 'loan', 'id', {
      id: loan.id,
      version: 1,
      returnedOn: '2026-05-01',
    });
    expect(early.problems[0].path).toEqual(['returnedOn']);
    await send(api, 'changeLoan', 'loan', 'id', {
      id: loan.id,
      version: 1,
      returnedOn: '2026-05-30',
    });
    expect((await whereabouts(id)).whereabouts.state).toBe('AT_HAND');
  });

  it('lends one item to one person at a time, twice at once too', async () => {
    const [id = ''] = await rigs();
    const both = await Promise.all([lend(id), lend(id)]);
    expect(both.map(({ problems }) => problems.length).sort()).toEqual([0, 1]);
    const bad = await lend(id, { dueOn: '2026-05-01', lentOn: '2027-01-01' });
    expect(bad.problems.map(({ path }: any) => path[0])).toEqual(['itemId', 'lentOn', 'dueOn']);
  });

  it('hands out the identification sheet with the report of a theft', async () => {
    const [id = ''] = await rigs();
    const { loss, problems }: any = await send(
      api,
      'reportLoss',
      'loss',
      'id kind item { objectId { answers { category } missing } }',
      { itemId: id, missedOn: '2026-05-28', reportedTo: 'Police', reportNumber: '77/26' },
    );
    expect(problems).toEqual([]);
    expect(loss.kind).toBe('STOLEN');
    expect(loss.item.objectId.answers).toHaveLength(9);
    expect((await whereabouts(id)).whereabouts).toMatchObject({
      state: 'STOLEN',
      since: '2026-05-28',
    });
    expect((await lend(id)).problems[0].code).toBe('CONFLICT');
    await send(api, 'changeLoss', 'loss', 'id', { id: loss.id, version: 1, foundOn: '2026-05-31' });
    expect((await whereabouts(id)).whereabouts.state).toBe('AT_HAND');
  });

  it('parts with a lot at one price, to the last cent, and keeps the records', async () => {
    const ids = await rigs(3);
    const { disposal, problems }: any = await send(
      api,
      'recordDisposal',
      'disposal',
      'id price { amount } costs { amount { amount } } lines { price { amount } item { id } } toParty { name }',
      {
        disposedOn: '2026-05-30',
        toParty: { name: 'Olga Brandt' },
        price: money('100.00'),
        costs: [{ description: 'Carriage', amount: money('12.00') }],
        lines: ids.map((itemId) => ({ itemId })),
      },
    );
    expect(problems).toEqual([]);
    expect(disposal.lines.map(({ price }: any) => price.amount)).toEqual([
      '33.34',
      '33.33',
      '33.33',
    ]);
    const gone = await whereabouts(ids[0] ?? '');
    expect(gone.retiredAt).not.toBeNull();
    expect(gone.whereabouts).toMatchObject({ state: 'DISPOSED_OF', with: { name: 'Olga Brandt' } });
    const again: any = await send(api, 'recordDisposal', 'disposal', 'id', {
      disposedOn: '2026-05-30',
      price: money('1.00'),
      lines: [{ itemId: ids[0] }, { itemId: ids[0] }],
    });
    expect(again.problems.length).toBeGreaterThan(1);
    const [kept = ''] = await rigs();
    const uneven: any = await send(api, 'recordDisposal', 'disposal', 'id', {
      disposedOn: '2026-05-30',
      price: money('50.00'),
      lines: [{ itemId: kept, price: money('49.99') }],
    });
    expect(uneven.problems[0].message).toContain('do not add up');
    expect((await whereabouts(kept)).retiredAt).toBeNull();
  });
});
