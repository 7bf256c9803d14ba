import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { insertRow } from '../../src/db/insertRow.js';
import { ProjectEntity } from '../../src/features/projects/project.entity.js';
import { money, newRig, record, send } from '../support/lotStory.js';
import { testApi, type TestApi } from '../support/testApi.js';

describe.each(['sqlite', 'postgres'] as const)('money spent, on %s', (engine) => {
  let api: TestApi;
  beforeAll(async () => {
    api = await testApi(engine);
  });
  afterAll(() => api.close());

  const shown =
    'id version spentOn amount { amount currency } description note item { id } project { title } paidTo { name }';
  const rig = async () => (await record(api, { lines: [newRig()] })).lines[0].item.id as string;
  const expense = (input: object) =>
    send(api, 'recordExpense', 'expense', shown, {
      spentOn: '2026-05-10',
      amount: money('12.50'),
      description: 'filter capacitors',
      ...input,
    });
  const change = (input: object) => send(api, 'changeExpense', 'expense', shown, input);
  const project = async (rigId: string) => {
    const act = { action: 'test', actorId: null, now: '2026-06-01T12:00:00.000Z' };
    const { id } = await api.database.write(act, (work) =>
      insertRow(work, ProjectEntity, {
        itemId: rigId.replace('Rig_', ''),
        title: 'Back on the air',
        targetStandard: 'WORKING',
        status: 'ACTIVE',
        startedOn: null,
        closedAt: null,
        ceilingMinorUnits: null,
        ceilingCurrency: null,
        ceilingMinutes: null,
        decision: null,
      }),
    );
    return `Project_${id}`;
  };

  it('is kept on an item, within one of its projects', async () => {
    const itemId = await rig();
    const { expense: kept } = await expense({
      itemId,
      projectId: await project(itemId),
      paidTo: { name: 'Coil & Sons', kind: 'ORGANISATION' },
    });
    expect(kept).toMatchObject({
      amount: { amount: '12.50', currency: 'EUR' },
      item: { id: itemId },
      project: { title: 'Back on the air' },
      paidTo: { name: 'Coil & Sons' },
    });
  });

  it('is refused within a project of another item, by name, also when the item changes', async () => {
    const itemId = await rig();
    const other = await rig();
    const projectId = await project(itemId);
    const { problems } = await expense({ itemId: other, projectId });
    expect(problems).toEqual([
      {
        code: 'CONFLICT',
        message: expect.stringContaining('“Back on the air”'),
        path: ['projectId'],
      },
    ]);
    const { id } = (await expense({ itemId, projectId })).expense;
    const moved = await change({ id, version: 1, itemId: other });
    expect(moved.problems[0]).toMatchObject({ code: 'CONFLICT', path: ['projectId'] });
    const freed = await change({ id, version: 1, itemId: other, projectId: null });
    expect(freed.expense).toMatchObject({ item: { id: other }, project: null });
  });

  it('may come back: then it is below zero; but nothing is not money', async () => {
    const itemId = await rig();
    const { expense: back } = await expense({
      itemId,
      amount: money('-4', 'JPY'),
      description: 'refund for the wrong value',
    });
    expect(back.amount).toEqual({ amount: '-4', currency: 'JPY' });
    const none = await expense({ itemId, amount: money('0.00') });
    expect(none.problems).toEqual([
      expect.objectContaining({ code: 'INVALID', path: ['amount', 'amount'] }),
    ]);
    const huge = await expense({ itemId, amount: money('90000000000000') });
    expect(huge.problems[0]).toMatchObject({ code: 'INVALID', path: ['amount', 'amount'] });
  });

  it('that never was stays as a record of zero, and says why', async () => {
    const { id } = (await expense({ itemId: await rig() })).expense;
    const silent = await change({ id, version: 1, amount: money('0') });
    expect(silent.problems).toEqual([expect.objectContaining({ path: ['note'] })]);
    const told = await change({ id, version: 1, amount: money('0'), note: 'Order cancelled.' });
    expect(told.expense).toMatchObject({ amount: { amount: '0.00' }, note: 'Order cancelled.' });
    expect((await change({ id, version: 1, description: 'x' })).problems[0]?.code).toBe(
      'OUT_OF_DATE',
    );
  });

  it('tells everything that is wrong at once', async () => {
    const { problems } = await expense({
      itemId: await rig(),
      spentOn: '2030-01-01',
      amount: money('1.005'),
      description: '',
    });
    expect(problems.map(({ path }) => path.join('.'))).toEqual([
      'spentOn',
      'amount.amount',
      'description',
    ]);
  });

  it('is listed on its item, the latest first, page by page', async () => {
    const itemId = await rig();
    for (const spentOn of ['2026-01-02', '2026-03-01', '2025-12-31']) {
      await expense({ itemId, spentOn });
    }
    const page = async (after: string | null) =>
      (
        await api.ask(
          `query ($id: ID!, $after: String) { node(id: $id) { ... on Rig {
            expenses(first: 2, after: $after) { totalCount nodes { spentOn } pageInfo { endCursor hasNextPage } }
          } } }`,
          { id: itemId, after },
        )
      ).node.expenses;
    const first = await page(null);
    expect(first).toMatchObject({
      totalCount: 3,
      nodes: [{ spentOn: '2026-03-01' }, { spentOn: '2026-01-02' }],
    });
    expect((await page(first.pageInfo.endCursor)).nodes).toEqual([{ spentOn: '2025-12-31' }]);
  });
});
