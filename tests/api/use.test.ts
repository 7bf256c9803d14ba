import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { attempt } from '../support/catalogue.js';
import { carried } from '../support/carried.js';
import { shackStory } from '../support/shackStory.js';
import { testApi, type TestApi } from '../support/testApi.js';

const DAY_MS = 86_400_000;

describe.each(['sqlite', 'postgres'] as const)('use on the air on %s', (engine) => {
  let api: TestApi;
  let rig: string;
  let other: string;
  let supply: string;
  beforeAll(async () => {
    api = await testApi(engine);
    const story = shackStory(api);
    const model = await story.model('Pellmere 9');
    rig = await story.rig('R-1', model);
    other = await story.rig('R-2', model);
    supply = await story.accessory('PS-1', 'POWER_SUPPLY');
  }, 60_000);
  afterAll(() => api.close());

  const used = (rigId: string, hours: number, more: object = {}) =>
    carried(api, 'recordUse', { rigId, hours, ...more }, 'use', '{ id version startedAt }');

  it('adds up hours and contacts of a rig, and hours of what served it', async () => {
    api.nowMs += DAY_MS;
    const first = await used(rig, 2, {
      contacts: 7,
      band: '40m',
      mode: 'CW',
      accessoryIds: [supply],
    });
    expect(first.startedAt).toBe(new Date(api.nowMs - 2 * 3_600_000).toISOString());
    await used(rig, 1.5, { contacts: 3 });
    const { a, b } = await api.ask(`{
      a: item(inventoryNumber: "R-1") { use { hours contacts uses lastUsedAt basis { counted { count } } }
        uses { nodes { minutes band item { inventoryNumber } } } }
      b: item(inventoryNumber: "PS-1") { use { hours contacts } }
    }`);
    expect(a.use).toMatchObject({ hours: 3.5, contacts: 10, uses: 2 });
    expect(a.uses.nodes).toHaveLength(2);
    expect(b.use).toEqual({ hours: 2, contacts: 0 });
    await carried(api, 'changeUse', { id: first.id, version: first.version, hours: 1 }, 'use');
    const { c, d } = await api.ask(`{
      c: item(inventoryNumber: "R-1") { use { hours } }
      d: item(inventoryNumber: "PS-1") { use { hours } } }`);
    expect([c.use.hours, d.use.hours]).toEqual([2.5, 1]);
  });

  it('refuses what cannot have been, all at once', async () => {
    const { problems } = await attempt(
      api,
      'recordUse',
      { rigId: rig, hours: 0, contacts: -1, band: 'forty', accessoryIds: [supply, supply] },
      'use { id }',
    );
    expect(problems.map(({ path }) => path.join('.'))).toEqual([
      'hours',
      'contacts',
      'band',
      'accessoryIds.1',
    ]);
    const startedAt = new Date(api.nowMs - 60_000).toISOString();
    const early = await attempt(
      api,
      'recordUse',
      { rigId: rig, hours: 2, startedAt },
      'use { id }',
    );
    expect(early.problems[0]?.message).toMatch(/end in the future/);
  });

  it('puts the longest idle first among those that are ready', async () => {
    const order = async () =>
      (await api.ask('{ rotation { idleDays rig { inventoryNumber } } }')).rotation.map(
        ({ idleDays, rig: { inventoryNumber } }: any) => [inventoryNumber, idleDays],
      );
    expect(await order()).toEqual([
      ['R-2', null],
      ['R-1', 0],
    ]);
    api.nowMs += 3 * DAY_MS;
    await used(other, 1);
    expect(await order()).toEqual([
      ['R-1', 3],
      ['R-2', 0],
    ]);
  });

  it('makes maintenance fall due by hours of use or by the calendar', async () => {
    const rule = await carried(
      api,
      'addMaintenanceRule',
      { itemId: rig, title: 'Clean the relay contacts', everyUseHours: 4, everyDays: 100 },
      'rule',
      '{ id isDue useHoursLeft dueAt }',
    );
    expect(rule).toMatchObject({ isDue: false, useHoursLeft: 4 });
    api.nowMs += DAY_MS;
    await used(rig, 3);
    const soon = '{ maintenanceDue(fromShare: 0.7) { title share item { inventoryNumber } } }';
    expect((await api.ask(soon)).maintenanceDue).toEqual([
      { title: 'Clean the relay contacts', share: 0.75, item: { inventoryNumber: 'R-1' } },
    ]);
    api.nowMs += DAY_MS;
    await used(rig, 1);
    const due = '{ maintenanceDue { isDue useHoursLeft usedHours } }';
    expect((await api.ask(due)).maintenanceDue).toEqual([
      { isDue: true, useHoursLeft: 0, usedHours: 4 },
    ]);
    const { maintenanceCalendar } = await api.ask('{ maintenanceCalendar }');
    expect(maintenanceCalendar.replaceAll('\r\n ', '')).toContain(
      'R-1: “Clean the relay contacts” is due',
    );
    const recorded = await carried(
      api,
      'recordMaintenance',
      { ruleId: rule.id },
      'rule',
      '{ done { id version doneAt withdrawnAt } }',
    );
    expect((await api.ask(due)).maintenanceDue).toEqual([]);
    // Written down by mistake: it is due again, and what was written stays to be seen.
    const [done] = recorded.done;
    const back = { id: done.id, version: done.version, isWithdrawn: true };
    const undone = await carried(
      api,
      'changeMaintenanceDone',
      back,
      'rule',
      '{ isDue done { version withdrawnAt } }',
    );
    expect(undone).toEqual({
      isDue: true,
      done: [{ version: 2, withdrawnAt: new Date(api.nowMs).toISOString() }],
    });
    const stale = await attempt(api, 'changeMaintenanceDone', back, 'rule { id }');
    expect(stale.problems[0]?.code).toBe('OUT_OF_DATE');
    const again = { id: done.id, version: 2, isWithdrawn: false, note: 'It was done after all' };
    await carried(api, 'changeMaintenanceDone', again, 'rule');
    expect((await api.ask(due)).maintenanceDue).toEqual([]);
    api.nowMs += 100 * DAY_MS;
    expect((await api.ask(due)).maintenanceDue).toMatchObject([{ isDue: true, usedHours: 0 }]);
    const none = await attempt(
      api,
      'addMaintenanceRule',
      { itemId: rig, title: 'x' },
      'rule { id }',
    );
    expect(none.problems[0]?.message).toMatch(/after how many/);
  });

  it('ages a component by the use of whatever it sat in', async () => {
    const fit = { itemId: rig, designator: 'V1', component: { marking: '6146B' } };
    const fitting = await carried(api, 'fitComponent', fit, 'fitting', '{ id component { id } }');
    api.nowMs += DAY_MS;
    await used(rig, 2);
    const removal = { componentId: fitting.component.id, disposition: 'STOCK' };
    api.nowMs += DAY_MS;
    await attempt(api, 'removeComponent', removal, 'fitting { id }');
    const { node } = await api.ask(
      'query ($id: ID!) { node(id: $id) { ... on Component { useHours } } }',
      { id: fitting.component.id },
    );
    expect(node.useHours).toBe(2);
  });
});
