import { auditServer } from 'graphql-http';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { httpApi, type HttpApi } from '../support/httpApi.js';

// Source: GraphQL over HTTP specification, through the audit suite of the `graphql-http` package.
describe('GraphQL over HTTP', () => {
  let api: HttpApi;
  beforeAll(async () => {
    api = await httpApi();
  });
  afterAll(() => api.close());

  it('passes every audit: all MUST, all SHOULD, all MAY', async () => {
    // The header says that the request was not made by a form in somebody's page.
    const fetchFn: typeof fetch = (input, init) =>
      fetch(input, { ...init, headers: { ...init?.headers, 'apollo-require-preflight': '1' } });
    const results = await auditServer({ url: api.url, fetchFn });
    const failed = results.filter((result) => result.status !== 'ok');
    expect(failed.map(({ id, name, status }) => `${status} ${id} ${name}`)).toEqual([]);
    expect(results.length).toBeGreaterThanOrEqual(61);
  });

  it('does not run a mutation sent by GET, nor a request that a form could send', async () => {
    const mutation = 'mutation { createPlace(input: { name: "Attic" }) { place { id } } }';
    const got = await fetch(`${api.url}?query=${encodeURIComponent(mutation)}`, {
      headers: { 'apollo-require-preflight': '1' },
    });
    expect(got.status).toBe(405);
    const form = await fetch(api.url, {
      method: 'POST',
      headers: { 'content-type': 'text/plain' },
      body: JSON.stringify({ query: mutation }),
    });
    expect(form.status).toBe(400);
  });
});
