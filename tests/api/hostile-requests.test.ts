import { request } from 'node:http';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { httpApi, type HttpApi } from '../support/httpApi.js';

interface Answer {
  data?: unknown;
  errors?: { message: string; extensions: { code: string; errorId?: string } }[];
}

describe('requests that ask for too much, or make no sense', () => {
  let api: HttpApi;
  beforeAll(async () => {
    api = await httpApi();
  });
  afterAll(() => api.close());

  const send = async (body: object | string): Promise<{ status: number; answer: Answer }> => {
    const response = await api.post(body);
    return { status: response.status, answer: (await response.json()) as Answer };
  };

  it('refuses seven lists inside one another with 400, a code and a reason', async () => {
    const query = `{places{nodes{${'inner{'.repeat(6)}name${'}'.repeat(6)}}}}`;
    expect(query.length).toBeLessThan(80);
    const { status, answer } = await send({ query });
    expect(status).toBe(400);
    expect(answer.errors?.[0]?.extensions.code).toBe('QUERY_TOO_COSTLY');
    expect(answer.errors?.[0]?.message).toMatch(/could ask for \d+ values; 100000 is the most/);
    expect(answer.data).toBeUndefined();
  });

  it('lets nobody run the trials of a whole list, nor of one project again and again', async () => {
    const onList = (first: number) =>
      `{ projects(first: ${first}) { nodes { forecast { hours { p80Hours } } } } }`;
    const code = async (query: string) =>
      (await send({ query })).answer.errors?.[0]?.extensions.code;
    expect(await code(onList(2))).toBeUndefined();
    expect(await code(onList(20))).toBe('QUERY_TOO_COSTLY');
    const again = Array.from({ length: 6 }, (_, n) => `q${n}: workQueue { basis { method } }`);
    expect(await code(`{ ${again.join(' ')} }`)).toBe('QUERY_TOO_COSTLY');
  });

  it('counts page sizes given as variables, and through fragments', async () => {
    const query = `query ($first: Int!) { places(first: $first) { nodes { ...p } } }
      fragment p on Place { inner { inner { inner { inner { name } } } } }`;
    expect((await send({ query, variables: { first: 1 } })).status).toBe(200);
    const { status, answer } = await send({ query, variables: { first: 100 } });
    expect([status, answer.errors?.[0]?.extensions.code]).toEqual([400, 'QUERY_TOO_COSTLY']);
  });

  it('bounds `first`, and says from where to where', async () => {
    for (const first of [0, -1, 101, 2_000_000]) {
      const { answer } = await send({ query: `{ places(first: ${first}) { nodes { name } } }` });
      expect(answer.errors?.[0]?.message).toMatch(/must be from 1 to 100|could ask for/);
    }
  });

  it('bounds depth, tokens, mutations in one request and the size of the body', async () => {
    const deep = `{ places { nodes { ${'within { '.repeat(30)}name${' }'.repeat(30)} } } }`;
    expect((await send({ query: deep })).answer.errors?.[0]?.message).toMatch(/levels deep/);
    const long = `{ ${'__typename '.repeat(5000)} }`;
    expect((await send({ query: long })).answer.errors?.[0]?.message).toMatch(/token/i);
    const many = `mutation { ${Array.from({ length: 11 }, (_, n) => `m${n}: createPlace(input: {name: "P"}) { problems { code } }`).join(' ')} }`;
    expect((await send({ query: many })).answer.errors?.[0]?.extensions.code).toBe(
      'TOO_MANY_MUTATIONS',
    );
    const big = await send({ query: `# ${'x'.repeat(1_200_000)}\n{ __typename }` });
    expect(big.status).toBe(413);
    expect(big.answer.errors?.[0]?.message).toMatch(/larger than 1 MB/);
  });

  it('answers a body that is not JSON in GraphQL’s own shape', async () => {
    const { status, answer } = await send('{"query": ');
    expect(status).toBe(400);
    expect(answer.errors?.[0]?.message).toMatch(/not JSON/);
  });

  it('shows neither stack nor SQL nor what was submitted when something fails inside', async () => {
    const secret = 'moon-and-sixpence';
    const { rows } = api.database.reader;
    api.database.reader.rows = () => Promise.reject(new Error(`near "${secret}": SQL syntax`));
    const { answer } = await send({ query: '{ places { nodes { name } } }' });
    api.database.reader.rows = rows;
    expect(JSON.stringify(answer)).not.toMatch(/moon|SQL|stack|node_modules/);
    const error = answer.errors?.[0];
    expect(error?.extensions.code).toBe('INTERNAL_SERVER_ERROR');
    expect(error?.message).toContain(String(error?.extensions.errorId));
    expect(api.logged.at(-1)).toMatchObject({ id: error?.extensions.errorId });
  });

  it('answers to no host name but its own', async () => {
    const status = await new Promise((resolve, reject) => {
      request(api.url, { method: 'POST', headers: { host: 'evil.example' } }, (response) => {
        response.resume();
        resolve(response.statusCode);
      })
        .on('error', reject)
        .end();
    });
    expect(status).toBe(421);
  });

  it('allows no other site to read what it says', async () => {
    const response = await api.post(
      { query: '{ __typename }' },
      { origin: 'https://evil.example' },
    );
    expect(response.headers.get('access-control-allow-origin')).toBeNull();
  });
});
