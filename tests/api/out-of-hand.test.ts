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

  const blockers = async (id: string): Promise<string[]> =>
    (
      await api.ask(
        'query ($id: ID!) { node(id: $id) { ... on Rig { readiness { blockers { code } } } } }',
        { id },
      )
    ).node.readiness.blockers.map(({ code }: { code: string }) => code);

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

  it('knows what is lent to us: at hand, due back, and not ours to lend or to sell', async () => {
    const [id = ''] = await rigs();
    const { loan, problems }: any = await send(
      api,
      'borrowItem',
      'loan',
      'id direction borrower { name }',
      { itemId: id, lender: { name: 'Signals museum' }, lentOn: '2026-05-01', dueOn: '2026-05-31' },
    );
    expect(problems).toEqual([]);
    expect(loan).toMatchObject({ direction: 'IN', borrower: { name: 'Signals museum' } });
    expect((await whereabouts(id)).whereabouts).toMatchObject({
      state: 'LENT_TO_US',
      overdueDays: 1,
      with: { name: 'Signals museum' },
    });
    expect((await lend(id)).problems[0].message).toContain('lent to us since 2026-05-01');
    const { loans } = await api.ask('{ loans(direction: IN) { nodes { item { id } } } }');
    expect(loans.nodes).toEqual([{ item: { id } }]);
    expect(await blockers(id)).not.toContain('NOT_IN_HAND');
    await send(api, 'changeLoan', 'loan', 'id', {
      id: loan.id,
      version: 1,
      returnedOn: '2026-05-31',
    });
    expect((await whereabouts(id)).whereabouts.state).toBe('AT_HAND');
  });

  it('is not ready for the air while it is lent or missing', async () => {
    const [id = ''] = await rigs();
    expect(await blockers(id)).not.toContain('NOT_IN_HAND');
    const { loan } = await lend(id);
    expect(await blockers(id)).toContain('NOT_IN_HAND');
    await send(api, 'changeLoan', 'loan', 'id', {
      id: loan.id,
      version: 1,
      returnedOn: '2026-05-30',
    });
    expect(await blockers(id)).not.toContain('NOT_IN_HAND');
    await send(api, 'reportLoss', 'loss', 'id', {
      itemId: id,
      kind: 'LOST',
      missedOn: '2026-05-31',
    });
    expect(await blockers(id)).toContain('NOT_IN_HAND');
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
    const corrected = (input: object): Promise<any> =>
      send(
        api,
        'changeDisposal',
        'disposal',
        'version price { amount } lines { price { amount } }',
        {
          id: disposal.id,
          ...input,
        },
      );
    const dearer = await corrected({ version: 1, price: money('200.00') });
    expect(dearer.disposal.lines.map(({ price }: any) => price.amount)).toEqual([
      '66.68',
      '66.66',
      '66.66',
    ]);
    const lines = ids.map((itemId, index) => ({ itemId, price: money(`${index + 1}0.00`) }));
    const uncounted = await corrected({ version: 2, lines });
    expect(uncounted.problems[0].message).toContain('do not add up');
    const short = await corrected({ version: 2, price: money('30.00'), lines: lines.slice(1) });
    expect(short.problems[0].message).toContain('every item of the lot once');
    const split = await corrected({ version: 2, price: money('60.00'), lines });
    expect(split.disposal.lines.map(({ price }: any) => price.amount)).toEqual([
      '10.00',
      '20.00',
      '30.00',
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
