// cspell:words Größe Ægir Þórsson Škoda Ольга Ёлкина ЛКИНА
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { benchStory, type BenchStory } from '../support/benchStory.js';
import { carried } from '../support/carried.js';
import { testApi, type TestApi } from '../support/testApi.js';

const forged = (key: unknown): string => Buffer.from(JSON.stringify(key)).toString('base64url');

describe.each(['sqlite', 'postgres'] as const)('cursors and orders on %s', (engine) => {
  let api: TestApi;
  let story: BenchStory;
  beforeAll(async () => {
    api = await testApi(engine);
    story = await benchStory(api);
    for (const designator of ['V10', 'V2', 'V1a', 'R7', 'V1b', 'C', 'V1']) {
      const component = { marking: designator };
      await carried(api, 'fitComponent', { itemId: story.rig, designator, component }, 'fitting');
    }
  });
  afterAll(() => api.close());

  const components = async (first: number, after: string | null) =>
    (
      await api.ask(
        `query ($id: ID!, $first: Int!, $after: String) { node(id: $id) { ... on Rig {
           components(first: $first, after: $after) {
             nodes { designator } pageInfo { hasNextPage endCursor } } } } }`,
        { id: story.rig, first, after },
      )
    ).node.components;

  it('list what sits in a set as people count: V2 before V10', async () => {
    const walked: string[] = [];
    let after: string | null = null;
    do {
      const { nodes, pageInfo } = await components(2, after);
      walked.push(...nodes.map(({ designator }: { designator: string }) => designator));
      after = pageInfo.hasNextPage ? pageInfo.endCursor : null;
    } while (after !== null);
    expect(walked).toEqual(['C', 'R7', 'V1', 'V1a', 'V1b', 'V2', 'V10']);
  });

  const refused = async (query: string, after: string) => {
    const { errors } = await api.tryToAsk(query, { after, id: story.rig });
    return [errors?.[0]?.extensions['code'], errors?.[0]?.message] as const;
  };
  const rigs = `query ($after: String) { rigs(after: $after) { nodes { name } } }`;
  const below = `query ($id: ID!, $after: String) { node(id: $id) { ... on Rig {
    components(after: $after) { nodes { id } } model { fitOut(after: $after) { nodes { id } } } } } }`;
  const fitOut = `query ($id: ID!, $after: String) { node(id: $id) { ... on Rig {
    model { fitOut(after: $after) { nodes { id } } } } } }`;

  it('refuse a cursor of another list, below a parent too', async () => {
    const { pageInfo } = await components(1, null);
    const page = await api.ask('{ rigs(first: 1) { pageInfo { endCursor } } }');
    const another = ['BAD_USER_INPUT', expect.stringContaining('another list or another order')];
    expect(await refused(rigs, pageInfo.endCursor)).toEqual(another);
    expect(await refused(below, page.rigs.pageInfo.endCursor)).toEqual(another);
    const backwards =
      'query ($after: String) { rigs(after: $after, sort: { by: INVENTORY_NUMBER, direction: DESC }) { nodes { id } } }';
    expect(await refused(backwards, page.rigs.pageInfo.endCursor)).toEqual(another);
  });

  it.each([
    [rigs, ['Rig INVENTORY_NUMBER ASC', 5, 'x']],
    [rigs, ['Rig INVENTORY_NUMBER ASC', 'R\u0000', 'x']],
    [rigs, ['Rig INVENTORY_NUMBER ASC', 'R-001', null]],
    [fitOut, ['FitOutPosition in model_id ordinal ASC', '1', 'x']],
    [fitOut, ['FitOutPosition in model_id ordinal ASC', 1.5, 'x']],
    [fitOut, ['FitOutPosition in model_id ordinal ASC', 2 ** 40, 'x']],
    [fitOut, ['FitOutPosition in model_id ordinal ASC', 1]],
    [fitOut, { ordinal: 1 }],
    [fitOut, 'nonsense'],
  ])('refuse a forged cursor: %#', async (query, key) => {
    expect((await refused(query, forged(key)))[0]).toBe('BAD_USER_INPUT');
  });

  it('find people whatever the accents and capitals they are typed with', async () => {
    const names = ['Jürgen Größe', 'Ægir Þórsson', 'ÉMILE Škoda', 'Ольга Ёлкина'];
    for (const name of names) await carried(api, 'createParty', { kind: 'PERSON', name }, 'party');
    const found = async (text: string) =>
      (
        await api.ask(
          'query ($text: String!) { parties(filter: { text: $text }) { nodes { name } } }',
          { text },
        )
      ).parties.nodes.map(({ name }: { name: string }) => name);
    const typed = ['JÜRGEN', 'jurgen größe', 'ægir', 'emile skoda', 'ёЛКИНА', '100%'];
    const answers = await Promise.all(typed.map(found));
    expect(answers).toEqual([...[0, 0, 1, 2, 3].map((index) => [names[index]]), []]);
  });
});
