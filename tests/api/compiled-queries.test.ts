import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { demoCollection } from '../support/demoCollection.js';
import { httpApi, type HttpApi } from '../support/httpApi.js';

const operation = (name: string): string =>
  readFileSync(join('schema', 'operations', `${name}.graphql`), 'utf8');

const named = `query ($number: String!, $isShort: Boolean!, $first: Int = 3, $after: String) {
  item(inventoryNumber: $number) {
    __typename id version changedAt
    again: name @skip(if: $isShort)
    ...More @include(if: $isShort)
    ... on Rig { servedBy { role accessory { id } } }
  }
}
fragment More on Item { note short: components(first: $first, after: $after) {
  totalCount edges { cursor node { designator component { marking } } } } }`;

/** Queries are compiled once they have been asked for often: nobody must notice when. */
describe('what is asked again and again', () => {
  let api: HttpApi;
  beforeAll(async () => {
    api = await httpApi('sqlite', demoCollection('sqlite'));
  }, 120_000);
  afterAll(() => api.close());

  const answers = async (query: string, variables: object, operationName?: string) => {
    const texts: string[] = [];
    for (let turn = 0; turn < 5; turn++) {
      const response = await api.post({ query, variables, operationName });
      texts.push(`${response.status} ${await response.text()}`);
    }
    return texts;
  };

  it.each([
    ['a page of rigs', operation('rigs-page'), { first: 5 }],
    ['a rig whole', operation('rig-whole'), { inventoryNumber: 'R-001' }],
    ['parts left out', named, { number: 'R-001', isShort: false }],
    ['parts put in', named, { number: 'R-001', isShort: true, first: 2 }],
    ['a variable that is missing', named, { number: 'R-001' }],
    ['a variable of the wrong type', named, { number: 'R-001', isShort: 'yes' }],
    ['a page too large', named, { number: 'R-001', isShort: true, first: 500 }],
    ['a cursor of another list', named, { number: 'R-001', isShort: true, after: 'WyJhIl0' }],
    ['two operations, none chosen', '{ rigs { totalCount } } query B { rigs { totalCount } }', {}],
    ['a type asked for by name', '{ __type(name: "Rig") { name fields { name } } }', {}],
  ])('is answered alike every time: %s', async (_what, query, variables) => {
    const [first, ...rest] = await answers(query, variables);
    expect(first).not.toBe('');
    for (const again of rest) expect(again).toBe(first);
  });

  it('follows the variables it is sent, and the operation that is named', async () => {
    const two = 'query A($n: Int!) { rigs(first: $n) { nodes { id } } } query B { __typename }';
    const counts: unknown[] = [];
    for (const n of [1, 2, 3, 1, 2, 3, 4]) {
      const response = await api.post({ query: two, variables: { n }, operationName: 'A' });
      const { data } = (await response.json()) as { data: { rigs: { nodes: unknown[] } } };
      counts.push(data.rigs.nodes.length);
    }
    expect(counts).toEqual([1, 2, 3, 1, 2, 3, 4]);
    const last = await answers(two, {}, 'B');
    expect(new Set(last).size).toBe(1);
    expect(last[0]).toContain('Query');
  });
});
