import { readFileSync } from 'node:fs';
import { request } from 'node:http';
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

/** What an answer says of itself. The date passes on, and a tag helps nobody who sends a POST. */
const headOf = ({ headers }: Response): string =>
  JSON.stringify([...headers].filter(([name]) => name !== 'date' && name !== 'etag').sort());

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
      texts.push(`${response.status} ${headOf(response)} ${await response.text()}`);
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

  const known = `query Known($first: Int!) { rigs(first: $first) { nodes {
    components(first: $first) { nodes { component { fittings { item { name } } } } } } } }`;
  const asked = { query: known, variables: { first: 2 } };
  const stored = { ...asked, extensions: { persistedQuery: { version: 9 } } };

  it('comes without the way through Express once it is known, in the media type asked for', async () => {
    await answers(known, asked.variables);
    const types: unknown[] = [];
    for (const accept of [
      '*/*',
      'application/json',
      'application/graphql-response+json',
      'application/graphql-response+json, application/json;q=0.9',
      'application/json;q=0.9, application/graphql-response+json',
      'text/html',
    ]) {
      const { status, headers } = await api.post(asked, { accept });
      types.push([status, headers.get('content-type'), headers.has('etag')]);
    }
    const json = 'application/json; charset=utf-8';
    const response = 'application/graphql-response+json; charset=utf-8';
    expect(types).toEqual([
      [200, json, false],
      [200, json, false],
      [200, response, false],
      [200, response, false],
      [200, response, true],
      [406, json, true],
    ]);
  });

  it('is understood behind a byte order mark', async () => {
    const response = await postRaw(api.url, `\uFEFF${JSON.stringify(asked)}`, {});
    expect([response.status, response.text]).toEqual([200, expect.stringContaining('nodes')]);
  });

  it.each([
    ['a host of another name', asked, { host: 'elsewhere.example' }, 421, 'does not answer'],
    ['a price too high', { query: known, variables: { first: 100 } }, {}, 400, 'could ask for'],
    ['a body that is cut off', JSON.stringify(asked).slice(0, -1), {}, 400, 'is not JSON'],
    ['a body that is a word', '"rigs"', {}, 400, 'is not JSON'],
    ['a body that is nothing', 'null', {}, 400, 'is not JSON'],
    ['a list of questions', [asked, asked], {}, 400, 'batch'],
    ['a body too large', `{"query":"${'x'.repeat(1_100_000)}"}`, {}, 413, 'larger than 1 MB'],
    ['variables as text', { query: known, variables: '{}' }, {}, 400, 'should be provided as an'],
    ['a name that it has not', { ...asked, operationName: 'Other' }, {}, 400, 'Unknown operation'],
    ['a stored query', stored, {}, 400, 'Unsupported persisted query version'],
    ['a compressed body', JSON.stringify(asked), { 'content-encoding': 'x-none' }, 415, 'encoding'],
  ])('refuses in the usual words: %s', async (_what, body, headers, status, words) => {
    await answers(known, asked.variables);
    const response = await postRaw(api.url, body, headers);
    expect([response.status, response.text]).toEqual([status, expect.stringContaining(words)]);
  });
});

/** As `fetch` would, but for a host of one's own choosing. */
function postRaw(url: string, body: unknown, headers: object) {
  const text = typeof body === 'string' ? body : JSON.stringify(body);
  return new Promise<{ status: number | undefined; text: string }>((resolve, reject) => {
    const sent = request(
      url,
      {
        method: 'POST',
        headers: {
          'content-type': 'application/json',
          'content-length': Buffer.byteLength(text),
          ...headers,
        },
      },
      (response) => {
        let answer = '';
        response.setEncoding('utf8').on('data', (part: string) => (answer += part));
        response.on('end', () => {
          resolve({ status: response.statusCode, text: answer });
        });
      },
    );
    sent.on('error', reject).end(text);
  });
}
