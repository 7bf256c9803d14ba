import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { carried } from '../support/carried.js';
import { testApi, type TestApi } from '../support/testApi.js';

const page = `query ($first: Int!) {
  rigs(first: $first) {
    totalCount
    nodes {
      inventoryNumber
      model { maker designation }
      place { name }
      hours { hours byTaskKind { taskKind hours } }
      completion { share }
      remaining { p50Hours p80Hours p95Hours }
      completeness { share missing }
      cost { byCurrency { total { amount } } }
      readiness { level blockers { message } }
      servedBy { role accessory { inventoryNumber readiness { level } } }
      findings(first: 5) { nodes { note } }
      components(first: 5) { nodes { designator component { state { state } } } }
      sessions(first: 5) { nodes { netSeconds task { title } } }
      projects { title completion { share } tasks(first: 5) { nodes { title isReady } } }
    }
  }
}`;

describe.each(['sqlite', 'postgres'] as const)('a page of rigs on %s', (engine) => {
  let api: TestApi;
  beforeAll(async () => {
    api = await testApi(engine);
    const shelf = await carried(api, 'createPlace', { name: 'Shelf' }, 'place');
    const person = await carried(api, 'createParty', { kind: 'PERSON', name: 'Imre' }, 'party');
    for (let number = 1; number <= 55; number++) {
      const inventoryNumber = `R-${String(number).padStart(3, '0')}`;
      const rig = await carried(api, 'createRig', { inventoryNumber, placeId: shelf.id }, 'rig');
      const project = { itemId: rig.id, title: 'Revive', targetStandard: 'WORKING' };
      const { id: projectId } = await carried(api, 'openProject', project, 'project');
      const estimate = { optimisticHours: 1, likelyHours: 2, pessimisticHours: 4 };
      await carried(api, 'addTask', { projectId, task: { title: 'Clean', estimate } }, 'task');
      const session = {
        personId: person.id,
        itemId: rig.id,
        startedAt: `2026-03-01T${String(number % 20).padStart(2, '0')}:00:00Z`,
        endedAt: `2026-03-01T${String(number % 20).padStart(2, '0')}:30:00Z`,
      };
      await carried(api, 'recordSession', session, 'session');
      const tube = { itemId: rig.id, designator: 'V1', component: { marking: '12AX7A' } };
      await carried(api, 'fitComponent', tube, 'fitting');
    }
  }, 120_000);
  afterAll(() => api.close());

  it('costs as many statements for 50 sets as for 5', async () => {
    const counted = async (first: number): Promise<[number, number]> => {
      const before = api.statements();
      const { rigs } = await api.ask(page, { first });
      return [rigs.nodes.length, api.statements() - before];
    };
    const [five, forFive] = await counted(5);
    const [fifty, forFifty] = await counted(50);
    expect([five, fifty]).toEqual([5, 50]);
    expect(forFifty).toBe(forFive);
    expect(forFive).toBeLessThan(30);
  });

  it('says the same of a set in a long list as of the set alone', async () => {
    const { rigs } = await api.ask(page, { first: 50 });
    const { rigs: one } = await api.ask(page, { first: 1 });
    expect(rigs.nodes[0]).toEqual(one.nodes[0]);
    expect(rigs.nodes[0].sessions.nodes[0].netSeconds).toBe(1800);
  });
});
