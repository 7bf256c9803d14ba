import fc from 'fast-check';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { plainItems, type PlainItem } from '../support/plainItems.js';
import { testApi, type TestApi } from '../support/testApi.js';

/** Few different values, so that many rows tie, and some without a standing. */
const aRow = fc.record({
  number: fc.integer({ min: 0, max: 99 }),
  name: fc.option(fc.constantFrom('a', 'B', 'b', 'ä')),
  hours: fc.option(fc.integer({ min: 0, max: 3 })),
  euros: fc.option(fc.integer({ min: 0, max: 3 })),
});
const story = fc.record({
  before: fc.array(aRow, { maxLength: 12 }),
  /** What is added after the first page, after the second … */
  between: fc.array(fc.array(aRow, { maxLength: 4 }), { maxLength: 6 }),
  first: fc.integer({ min: 1, max: 5 }),
  direction: fc.constantFrom('ASC', 'DESC'),
});

describe.each(['sqlite', 'postgres'] as const)('walking pages on %s', (engine) => {
  let api: TestApi;
  let made = 0;
  beforeAll(async () => {
    api = await testApi(engine);
  });
  afterAll(() => api.close());

  const item = (row: typeof aRow extends fc.Arbitrary<infer Row> ? Row : never): PlainItem => ({
    number: `P-${String(row.number).padStart(2, '0')}-${++made}`,
    name: row.name,
    standing: row.hours === null ? null : { hours: row.hours },
    costs: row.euros === null ? {} : { EUR: row.euros },
  });
  const page = async (placeId: string, sort: object, first: number, after: string | null) => {
    const { rigs } = await api.ask(
      `query ($placeId: ID!, $sort: ItemSort!, $first: Int!, $after: String) {
        rigs(filter: { placeId: $placeId }, sort: $sort, first: $first, after: $after) {
          nodes { inventoryNumber } pageInfo { hasNextPage endCursor }
        }
      }`,
      { placeId, sort, first, after },
    );
    const numbers: string[] = (rigs.nodes as { inventoryNumber: string }[]).map(
      (node) => node.inventoryNumber,
    );
    return { numbers, ...rigs.pageInfo } as {
      numbers: string[];
      hasNextPage: boolean;
      endCursor: string | null;
    };
  };

  it.each(['INVENTORY_NUMBER', 'HOURS', 'NAME', 'COST'])(
    'visits every row once, in the order of %s, while rows are added',
    async (by) => {
      const walk = fc.asyncProperty(story, async ({ before, between, first, direction }) => {
        const sort = { by, direction, ...(by === 'COST' && { currency: 'EUR' }) };
        const present = before.map(item);
        const placeId = await plainItems(api, null, present);
        const ownId = placeId.slice('Place_'.length);
        const walked: string[] = [];
        let after: string | null = null;
        for (let round = 0; ; round++) {
          const { numbers, hasNextPage, endCursor } = await page(placeId, sort, first, after);
          walked.push(...numbers);
          if (!hasNextPage) break;
          after = endCursor;
          const added = (between[round] ?? []).map(item);
          await plainItems(api, ownId, added);
        }
        expect(new Set(walked).size).toBe(walked.length);
        expect(walked).toEqual(expect.arrayContaining(present.map(({ number }) => number)));
        const { numbers: whole } = await page(placeId, sort, 100, null);
        expect(walked).toEqual(whole.filter((number) => walked.includes(number)));
      });
      await fc.assert(walk, { numRuns: 20 });
    },
    60_000,
  );
});
