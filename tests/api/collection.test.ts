import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { attempt, done } from '../support/catalogue.js';
import { testApi, type TestApi } from '../support/testApi.js';

describe.each(['sqlite', 'postgres'] as const)('the collection on %s', (engine) => {
  let api: TestApi;
  beforeAll(async () => {
    api = await testApi(engine);
  });
  afterAll(() => api.close());

  it('has a name and a currency before anybody has said so', async () => {
    const { collection } = await api.ask(
      `{ collection(zone: "Europe/Vienna") { version name homeCurrency zone owner { name } } }`,
    );
    expect(collection).toEqual({
      version: 0,
      name: 'My collection',
      homeCurrency: 'EUR',
      zone: 'Europe/Vienna',
      owner: null,
    });
  });

  it('is described once, by one of two who do so at the same time', async () => {
    const owner = await done(api, 'createParty', { name: 'Martin Field' }, 'party { id }');
    const answer = 'collection { version name zone homeCurrency owner { name } }';
    const input = { version: 0, name: 'The attic', ownerId: owner.id, homeCurrency: 'CHF' };
    const both = await Promise.all([
      attempt(api, 'describeCollection', input, answer),
      attempt(api, 'describeCollection', input, answer),
    ]);
    const refused = both.flatMap(({ problems }) => problems);
    expect(refused).toMatchObject([{ code: 'OUT_OF_DATE' }]);
    const now = await done(api, 'describeCollection', { version: 1, zone: 'Asia/Tokyo' }, answer);
    expect(now).toEqual({
      version: 2,
      name: 'The attic',
      zone: 'Asia/Tokyo',
      homeCurrency: 'CHF',
      owner: { name: 'Martin Field' },
    });
  });
});
