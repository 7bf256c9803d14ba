import { readFileSync } from 'node:fs';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { demoCollection } from '../support/demoCollection.js';
import { testApi, type TestApi } from '../support/testApi.js';

/** Each query of the README with the answer printed below it. */
const asked = [
  ...readFileSync('README.md', 'utf8').matchAll(
    /```graphql\n([\s\S]*?)```\n\n```json\n([\s\S]*?)```/g,
  ),
].map(([, query = '', answer = '']) => ({ query, answer }));

describe('the README', () => {
  let api: TestApi;
  beforeAll(async () => {
    api = await testApi('sqlite', demoCollection('sqlite'));
  }, 120_000);
  afterAll(() => api.close());

  it('prints several queries with answers', () => {
    expect(asked.length).toBeGreaterThanOrEqual(6);
  });

  it.each(asked)('prints what the demo collection answers to $query', async ({ query, answer }) => {
    expect(JSON.parse(JSON.stringify(await api.ask(query)))).toEqual(JSON.parse(answer));
  });
});
