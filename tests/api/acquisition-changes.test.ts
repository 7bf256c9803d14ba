import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import {
  lotFields,
  money,
  newRig,
  record,
  send,
  shownLot,
  tryToRecord,
} from '../support/lotStory.js';
import { testApi, type TestApi } from '../support/testApi.js';

describe.each(['sqlite', 'postgres'] as const)('a lot once written down, on %s', (engine) => {
  let api: TestApi;
  beforeAll(async () => {
    api = await testApi(engine);
  });
  afterAll(() => api.close());

  it('puts one item into one lot when two lots claim it at the same time', async () => {
    const first = await record(api, { lines: [newRig()] });
    const line = first.lines[0];
    await send(api, 'changeAcquisition', 'acquisition', 'id', {
      id: first.id,
      version: 1,
      lines: [{ id: line.id, version: 1, itemId: null, sundries: 'not that one' }],
    });
    const both = await Promise.all(
      [1, 2].map(() => tryToRecord(api, { lines: [{ itemId: line.item.id }] })),
    );
    expect(both.filter(({ acquisition }) => acquisition !== null)).toHaveLength(1);
    expect(both.flatMap(({ problems }) => problems)[0]?.code).toBe('CONFLICT');
  });

  it('takes one more thing into a lot, and spreads anew', async () => {
    const { id } = await record(api, { lines: [newRig()] });
    const { acquisition } = await send(api, 'addLotLine', 'acquisition', lotFields, {
      acquisitionId: id,
      line: { sundries: 'a headset' },
    });
    const { lines } = shownLot(acquisition);
    expect(lines.map((line) => line.price.amount)).toEqual(['50.00', '50.00']);
    expect(lines[1]).toMatchObject({ ordinal: 1, sundries: 'a headset' });
  });

  it('changes price, way of spreading, lines and extra costs together, or nothing', async () => {
    const lot = await record(api, {
      extraCosts: [{ description: 'fuel', amount: money('8') }],
      lines: [newRig(), newRig()],
    });
    const change = (input: object) =>
      send(api, 'changeAcquisition', 'acquisition', lotFields, {
        id: lot.id,
        version: 1,
        spreadMethod: 'STATED_VALUES',
        price: money('60'),
        ...input,
      });
    const [first, second] = lot.lines;
    const half = await change({ lines: [{ id: first.id, version: 1, statedValue: '40' }] });
    expect(half.problems).toEqual([
      {
        code: 'INVALID',
        message:
          'Line 2 of the lot: The lot is spread by stated values: state the value of this line too.',
        path: ['lines'],
      },
    ]);
    const whole = await change({
      lines: [
        { id: first.id, version: 1, statedValue: '40' },
        { id: second.id, version: 1, statedValue: '20' },
      ],
      extraCosts: [
        { id: lot.extraCosts[0].id, version: 1, description: 'diesel', amount: money('9') },
        { description: 'lunch', amount: money('3', 'USD') },
      ],
    });
    expect(whole.problems).toEqual([]);
    expect(shownLot(whole.acquisition).lines.map((line) => line.totals)).toEqual([
      [
        { amount: '46.00', currency: 'EUR', minorUnits: 4600 },
        { amount: '2.00', currency: 'USD', minorUnits: 200 },
      ],
      [
        { amount: '23.00', currency: 'EUR', minorUnits: 2300 },
        { amount: '1.00', currency: 'USD', minorUnits: 100 },
      ],
    ]);
    const late = await change({ venue: 'elsewhere' });
    expect(late.problems[0]).toMatchObject({ code: 'OUT_OF_DATE' });
    // The values were stated in euro: in dollars each has to be stated again.
    const dollars = await change({ version: 2, price: money('60', 'USD') });
    expect(dollars.problems.map(({ path }) => path)).toEqual([['lines'], ['lines']]);
  });

  it('shows an item its lot and its line, at a fixed number of statements', async () => {
    await record(api, { lines: [newRig(), newRig(), newRig()] });
    const ask = async (first: number) => {
      const before = api.statements();
      const { rigs } = await api.ask(
        `query ($first: Int!) { rigs(first: $first) { nodes {
          id acquisition { acquiredOn lines { nodes { item { id } totals { amount } } } }
          lotLine { id totals { amount } acquisition { id } }
          claims { nodes { statement } } expenses(first: 2) { nodes { description } totalCount }
          provenance { events(first: 2) { nodes { kind } } contradictions { events { id } } basis { method } }
        } } }`,
        { first },
      );
      return { nodes: rigs.nodes, statements: api.statements() - before };
    };
    const few = await ask(2);
    const many = await ask(20);
    expect(many.nodes.length).toBeGreaterThan(few.nodes.length);
    expect(many.statements).toBe(few.statements);
    const [rig] = many.nodes;
    const own = (rig.acquisition.lines.nodes as any[]).find((line) => line.item?.id === rig.id);
    expect(rig.lotLine.totals).toEqual(own.totals);
    const { node } = await api.ask(
      `query ($id: ID!) { node(id: $id) { ... on LotLine { totals { amount } } } }`,
      { id: rig.lotLine.id },
    );
    expect(node.totals).toEqual(own.totals);
  });

  it('pages through the lines of a large lot, each with its share of the whole', async () => {
    const lines = Array.from({ length: 5 }, (_, index) => ({ sundries: `box ${index}` }));
    const { id } = await record(api, { price: money('1.00'), lines });
    const page = async (after: string | null) =>
      (
        await api.ask(
          `query ($id: ID!, $after: String) { node(id: $id) { ... on Acquisition {
            lines(first: 2, after: $after) { totalCount nodes { sundries price { amount } } pageInfo { endCursor hasNextPage } }
          } } }`,
          { id, after },
        )
      ).node.lines;
    const first = await page(null);
    const second = await page(first.pageInfo.endCursor);
    const third = await page(second.pageInfo.endCursor);
    expect(first.totalCount).toBe(5);
    expect([first, second, third].map(({ pageInfo }) => pageInfo.hasNextPage)).toEqual([
      true,
      true,
      false,
    ]);
    expect(
      [first, second, third].flatMap(({ nodes }) => (nodes as any[]).map((line) => line.sundries)),
    ).toEqual(lines.map(({ sundries }) => sundries));
    expect(third.nodes[0].price).toEqual({ amount: '0.20' });
  });

  it('pages through lots, the latest first', async () => {
    await record(api, { acquiredOn: '1999-12-31', venue: 'oldest', lines: [newRig()] });
    const seen: string[] = [];
    let after: string | null = null;
    do {
      const { acquisitions }: any = await api.ask(
        `query ($after: String) { acquisitions(first: 7, after: $after) {
          nodes { id acquiredOn venue } pageInfo { hasNextPage endCursor } totalCount } }`,
        { after },
      );
      seen.push(...(acquisitions.nodes as any[]).map((lot) => lot.acquiredOn));
      after = acquisitions.pageInfo.hasNextPage ? acquisitions.pageInfo.endCursor : null;
    } while (after);
    expect(seen).toEqual([...seen].sort().reverse());
    expect(seen.at(-1)).toBe('1999-12-31');
  });
});
