import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { testApi, type TestApi } from '../support/testApi.js';

describe.each(['sqlite', 'postgres'] as const)('places on %s', (engine) => {
  let api: TestApi;
  beforeAll(async () => {
    api = await testApi(engine);
  });
  afterAll(() => api.close());

  const create = `mutation ($input: CreatePlaceInput!) {
    createPlace(input: $input) {
      place { id name version within { name } inner { name } }
      problems { code message path }
    }
  }`;
  const change = `mutation ($input: ChangePlaceInput!) {
    changePlace(input: $input) { place { name version within { name } } problems { code message path } }
  }`;

  it('puts a shelf in a room, and finds both by id and by name', async () => {
    const room = (await api.ask(create, { input: { name: 'Workshop' } })).createPlace.place;
    const shelf = (await api.ask(create, { input: { name: 'Shelf A', withinId: room.id } }))
      .createPlace.place;
    expect(shelf.within.name).toBe('Workshop');
    const { node, places } = await api.ask(
      `query ($id: ID!) {
        node(id: $id) { id ... on Place { name inner { name within { name } } } }
        places(first: 1) { totalCount nodes { name } edges { cursor node { within { name } } } pageInfo { hasNextPage endCursor } }
      }`,
      { id: room.id },
    );
    expect(node.inner).toEqual([{ name: 'Shelf A', within: { name: 'Workshop' } }]);
    expect(places.totalCount).toBe(2);
    expect(places.pageInfo.hasNextPage).toBe(true);
    const next = await api.ask(
      `query ($after: String) { places(first: 1, after: $after) { nodes { name } pageInfo { hasNextPage } } }`,
      { after: places.pageInfo.endCursor },
    );
    expect(next.places).toEqual({
      nodes: [{ name: 'Workshop' }],
      pageInfo: { hasNextPage: false },
    });
  });

  it('refuses a place inside itself, and names the way round', async () => {
    const attic = (await api.ask(create, { input: { name: 'Attic' } })).createPlace.place;
    const chest = (await api.ask(create, { input: { name: 'Chest', withinId: attic.id } }))
      .createPlace.place;
    const { changePlace } = await api.ask(change, {
      input: { id: attic.id, version: 1, withinId: chest.id },
    });
    expect(changePlace.place).toBeNull();
    expect(changePlace.problems).toEqual([
      {
        code: 'CONFLICT',
        message: 'That would put the place inside itself: Attic in Chest in Attic.',
        path: ['withinId'],
      },
    ]);
  });

  it('refuses a change made on an older version, and an empty name', async () => {
    const { id } = (await api.ask(create, { input: { name: 'Barn' } })).createPlace.place;
    await api.ask(change, { input: { id, version: 1, name: 'Old barn' } });
    const late = await api.ask(change, { input: { id, version: 1, name: 'Red barn' } });
    expect(late.changePlace.problems[0]).toMatchObject({ code: 'OUT_OF_DATE', path: ['version'] });
    const empty = await api.ask(create, { input: { name: '  ' } });
    expect(empty.createPlace.problems[0]).toMatchObject({ code: 'INVALID', path: ['name'] });
  });
});
