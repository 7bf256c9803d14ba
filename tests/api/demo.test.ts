import { mkdtemp, readdir, rm, stat } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { AttachmentStore } from '../../src/features/attachments/attachmentStore.js';
import { loadDemo, type DemoLoaded } from '../../src/features/demo/loadDemo.js';
import { loadDemoPictures } from '../../src/features/demo/pictures/loadDemoPictures.js';
import { seedFolder } from '../../src/features/hazards/seedFolder.js';
import { reads } from '../../src/features/reads.js';
import { demoLevels, rigsByLevel } from '../support/demoLevels.js';
import { testApi, type TestApi } from '../support/testApi.js';

const folder = seedFolder('demo');

describe.each(['sqlite', 'postgres'] as const)('the demo collection on %s', (engine) => {
  let api: TestApi;
  let loaded: DemoLoaded;
  beforeAll(async () => {
    api = await testApi(engine);
    loaded = await loadDemo(api.database, folder, new Date(api.nowMs));
  }, 120_000);
  afterAll(() => api.close());

  const rig = async (inventoryNumber: string, fields: string) =>
    (
      await api.ask(`query ($number: String!) { rig(inventoryNumber: $number) { ${fields} } }`, {
        number: inventoryNumber,
      })
    ).rig;
  const blockersOf = async (inventoryNumber: string): Promise<string[]> =>
    (await rig(inventoryNumber, 'readiness { blockers { code } }')).readiness.blockers.map(
      ({ code }: { code: string }) => code,
    );

  it('holds twelve rigs, one of them sold on, and fifteen accessories', async () => {
    const { rigs, accessories, sold } = await api.ask(`{
      rigs(first: 1, filter: { isRetired: null }) { totalCount }
      accessories(first: 1, filter: { isRetired: null }) { totalCount }
      sold: rigs(first: 5, filter: { isRetired: true }) { nodes { inventoryNumber } }
    }`);
    expect([rigs.totalCount, accessories.totalCount]).toEqual([12, 15]);
    expect(sold.nodes).toEqual([{ inventoryNumber: 'R-011' }]);
    expect(loaded.counts.get('item')).toBe(27);
  });

  it('says which sets may go on the air, and what the others lack', async () => {
    expect(await rigsByLevel(api)).toEqual(demoLevels);
    expect(await blockersOf('R-002')).toEqual(['FINAL_CHECK_LAPSED', 'FINAL_CHECK_LAPSED']);
    expect(await blockersOf('R-004')).toContain('COMPONENT_SUSPECT');
    expect(await blockersOf('R-005')).toContain('ROLE_NOT_SERVED');
    expect(await blockersOf('R-006')).toContain('HAZARD_NOT_CLEARED');
    expect(await blockersOf('R-007')).toContain('POSITION_MISSING');
    expect(await blockersOf('R-008')).toContain('BLOCKING_FINDING_OPEN');
    expect(await blockersOf('R-010')).toContain('BLOCKING_FINDING_OPEN');
    expect(await blockersOf('R-012')).toContain('ROLE_NOT_SERVED');
  });

  it('has a set that was robbed of two tubes', async () => {
    const { completeness } = await rig('R-007', 'completeness { missing unknown }');
    expect(completeness).toEqual({ missing: ['V2', 'V7'], unknown: ['C41', 'C22'] });
  });

  it('has a tube that passed on the tester, one that is proven, and one that is suspect', async () => {
    const stateIn = async (inventoryNumber: string, designator: string) => {
      const rows = await api.database.reader.rows<{ id: string }>(
        `SELECT fitting.component_id AS "id" FROM fitting JOIN item ON item.id = fitting.item_id
         WHERE item.inventory_number = ? AND fitting.designator = ? AND fitting.removed_at IS NULL`,
        [inventoryNumber, designator],
      );
      const { node } = await api.ask(
        'query ($id: ID!) { node(id: $id) { ... on Component { state { state } } } }',
        { id: `Component_${rows[0]?.id ?? ''}` },
      );
      return node.state.state;
    };
    expect(await stateIn('R-007', 'V1')).toBe('PASSED_ON_TESTER');
    expect(await stateIn('R-003', 'V9')).toBe('PROVEN_IN_CIRCUIT');
    expect(await stateIn('R-004', 'V8')).toBe('SUSPECT');
  });

  it('spreads a lot in two currencies, and a gift at nothing', async () => {
    // 5 of 12 shares of 640.00 and 115.20 GBP and of 62.00 EUR; expenses 58.00 GBP, 46.80 EUR.
    const { cost } = await rig('R-003', 'cost { byCurrency { currency total { amount } } }');
    expect(cost.byCurrency).toEqual([
      { currency: 'EUR', total: { amount: '72.63' } },
      { currency: 'GBP', total: { amount: '372.67' } },
    ]);
    const gift = await rig('R-009', 'cost { byCurrency { currency price { amount } } }');
    expect(gift.cost.byCurrency).toEqual([{ currency: 'EUR', price: { amount: '0.00' } }]);
  });

  it('has treatments, spares, wants, prices, a matched set and a trend to show', async () => {
    const { treatmentResults, treatments, stockLots, wantedList, matchedSets } = await api.ask(`{
      treatmentResults(first: 1) { surface agent workedCount }
      treatments(first: 20) { nodes { meetings { earlier { surface } } } }
      stockLots(first: 1) { totalCount }
      wantedList { wants { partType { designation } prices { median { amount } recentCount } } }
      matchedSets(first: 5) { nodes { mismatch { word } } }
    }`);
    expect(treatmentResults).toEqual([
      { surface: 'front panel', agent: 'DETERGENT', workedCount: 2 },
    ]);
    expect(treatments.nodes.flatMap(({ meetings }: any) => meetings)).toEqual([
      { earlier: { surface: 'cabinet lid, outside' } },
    ]);
    expect(stockLots.totalCount).toBe(3);
    expect(wantedList.wants).toContainEqual({
      partType: { designation: '6BE6' },
      prices: [{ median: { amount: '6.00' }, recentCount: 3 }],
    });
    expect(matchedSets.nodes).toEqual([{ mismatch: { word: 'MATCHED' } }]);
    const readings = await api.database.reader.rows(
      `SELECT reading.id AS "id" FROM reading JOIN item ON item.id = reading.item_id
       WHERE item.inventory_number = 'R-003' AND reading.quantity = 'output power 40m CW'`,
    );
    expect(readings).toHaveLength(5);
  });

  it('counts an hour that was written down twice once, and reports it', async () => {
    const { hours } = await rig('R-005', 'hours { repeatedHours }');
    expect(hours.repeatedHours).toBe(1);
    const { collection } = await api.ask('{ collection { hours { repeatedHours } } }');
    expect(collection.hours.repeatedHours).toBe(1);
  });

  it('counts the nights in which the clocks change as long as they were', async () => {
    const nights = await api.database.reader.rows<{ startedAt: string; endedAt: string }>(
      `SELECT started_at AS "startedAt", ended_at AS "endedAt" FROM work_session
       WHERE note LIKE '%change of the clocks%' OR note LIKE 'Carrier drift%' ORDER BY note`,
    );
    const hours = nights.map(
      ({ startedAt, endedAt }) => (Date.parse(endedAt) - Date.parse(startedAt)) / 3_600_000,
    );
    expect(hours).toEqual([2, 4]);
  });

  it('has one contradiction: heard on the air before its model was made', async () => {
    const { rigs } = await api.ask(`{ rigs(first: 50) { nodes {
      inventoryNumber provenance { contradictions { code } } } } }`);
    const found = rigs.nodes.filter(
      (node: { provenance: { contradictions: unknown[] } }) =>
        node.provenance.contradictions.length > 0,
    );
    expect(found).toEqual([
      {
        inventoryNumber: 'R-009',
        provenance: { contradictions: [{ code: 'BEFORE_FIRST_YEAR_MADE' }] },
      },
    ]);
  });

  it('has a supply in the cabinet of a speaker that feeds two rigs, and a key for one alone', async () => {
    const { supply, key } = await api.ask(`{
      supply: item(inventoryNumber: "A-001") { ... on Accessory {
        housedIn { inventoryNumber } serves { rig { inventoryNumber } isExclusive } } }
      key: item(inventoryNumber: "A-007") { ... on Accessory {
        serves { rig { inventoryNumber } isExclusive } } }
    }`);
    expect(supply.housedIn).toEqual({ inventoryNumber: 'A-003' });
    const served = supply.serves.map(
      ({ rig: { inventoryNumber } }: { rig: { inventoryNumber: string } }) => inventoryNumber,
    );
    expect(served.sort()).toEqual(['R-003', 'R-004']);
    expect(key.serves).toEqual([{ rig: { inventoryNumber: 'R-009' }, isExclusive: true }]);
  });

  it('has finished, deferred, abandoned and running projects, and every earning rule', async () => {
    const distinct = async (column: string, table: string) =>
      (
        await api.database.reader.rows<{ word: string }>(
          `SELECT DISTINCT ${column} AS "word" FROM ${table}`,
        )
      )
        .map(({ word }) => word)
        .sort();
    const statuses = ['ABANDONED', 'ACTIVE', 'COMPLETED', 'DEFERRED'];
    expect(await distinct('status', 'project')).toEqual(statuses);
    const rules = ['FIFTY_FIFTY', 'PERCENT_WITH_EVIDENCE', 'WEIGHTED_STEPS', 'ZERO_HUNDRED'];
    expect(await distinct('earning_rule', 'task')).toEqual(rules);
  });

  it('has an estimate that was beaten, and one that was overrun beyond its pessimistic figure', async () => {
    const finished = await api.database.reader.rows<{
      id: string;
      title: string;
      likely: number;
      pessimistic: number;
    }>(
      `SELECT id AS "id", title AS "title", likely_minutes AS "likely",
         pessimistic_minutes AS "pessimistic" FROM task WHERE status = 'DONE'`,
    );
    const sessions = await api.database.reader.rows<{ taskId: string; from: string; to: string }>(
      `SELECT task_id AS "taskId", started_at AS "from", ended_at AS "to" FROM work_session`,
    );
    const minutesOn = (id: string): number =>
      sessions
        .filter(({ taskId }) => taskId === id)
        .reduce((sum, { from, to }) => sum + (Date.parse(to) - Date.parse(from)) / 60_000, 0);
    const over = finished.filter(({ id, pessimistic }) => minutesOn(id) > pessimistic);
    const under = finished.filter(({ id, likely }) => minutesOn(id) < likely);
    expect(over.map(({ title }) => title)).toContain('Paper and electrolytic capacitors');
    expect(under.map(({ title }) => title)).toContain('Changeover relay');
  });

  it('knows a dead band by its reading, and who may go on the air on the others', async () => {
    const { dead, alive } = await api.ask(`{
      dead: onAir(band: "10m", mode: "CW") { leftOut { rig { inventoryNumber } reasons } }
      alive: onAir(band: "40m", mode: "CW", atLeastWatts: 50) {
        rigs { watts restsOn rig { inventoryNumber } } allocation { region } }
    }`);
    const r003 = dead.leftOut.find(
      ({ rig: { inventoryNumber } }: any) => inventoryNumber === 'R-003',
    );
    expect(r003.reasons[0]).toMatch(
      /^No output on 10m CW: a reading on \d{4}-\d\d-\d\d found none/,
    );
    expect(alive.rigs).toEqual([
      { watts: 81.1, restsOn: 'READING', rig: { inventoryNumber: 'R-003' } },
    ]);
    expect(alive.allocation.region).toBe('REGION_1');
  });

  it('has sets that were used, one that rests longest, and maintenance that fell due', async () => {
    const {
      rotation,
      maintenanceDue,
      rig: first,
    } = await api.ask(`{
      rotation { rig { inventoryNumber } }
      maintenanceDue(fromShare: 0.8) { title item { inventoryNumber } }
      rig(inventoryNumber: "R-003") { use { hours contacts } } }`);
    expect(rotation.map(({ rig: { inventoryNumber } }: any) => inventoryNumber)).toEqual([
      'R-001',
      'R-009',
      'R-003',
    ]);
    expect(first.use).toEqual({ hours: 9, contacts: 28 });
    expect(maintenanceDue.map(({ title }: any) => title)).toEqual([
      'Burnish the changeover relay and look at its springs',
      'Covers off, dust out, screws of the power connectors tight',
    ]);
  });

  it('has a timer that somebody left running and is asked about, and work shown by a reading', async () => {
    const { runningTimers } = await api.ask('{ runningTimers { endQuestion person { name } } }');
    expect(runningTimers).toEqual([
      {
        endQuestion: expect.stringContaining('more than 16 hours'),
        person: { name: 'Bram Quillfeather' },
      },
    ]);
    const { projects } = await rig(
      'R-005',
      'projects { tasks(first: 20) { nodes { evidence { kind reading { quantity } } } } }',
    );
    const shown = projects.flatMap(({ tasks }: any) => tasks.nodes);
    expect(shown.map(({ evidence }: any) => evidence?.kind)).toContain('READING');
  });

  it('tells the history at the instants at which things happened', async () => {
    const [history] = await api.database.reader.rows<Record<string, string | number>>(
      `SELECT MIN(changed_at) AS "first", MAX(changed_at) AS "last",
         COUNT(DISTINCT action) AS "verbs" FROM change`,
    );
    const years =
      (Date.parse(String(history?.['last'])) - Date.parse(String(history?.['first']))) /
      (365.25 * 24 * 3_600_000);
    expect(years).toBeGreaterThan(1.9);
    expect(Date.parse(String(history?.['last']))).toBeLessThan(api.nowMs);
    expect(Number(history?.['verbs'])).toBeGreaterThan(20);
  });

  it('has a picture of every rig, one pair of before and after, all under a megabyte', async () => {
    const store = new AttachmentStore(await mkdtemp(join(tmpdir(), 'reglow-test-demo-')));
    const now = new Date(api.nowMs);
    const count = await loadDemoPictures(api.database, store, folder, { now, reads });
    const { rigs } = await api.ask(`{ rigs(first: 50, filter: { isRetired: null }) { nodes {
      coverPicture { caption file { digest } }
      attachments { nodes { role before { role } } } } } }`);
    expect(rigs.nodes).toHaveLength(12);
    const covers = rigs.nodes.map(({ coverPicture }: any) => coverPicture.file.digest);
    expect(new Set(covers).size).toBe(12);
    const all = rigs.nodes.flatMap(({ attachments }: any) => attachments.nodes);
    const pairs = all.filter(({ before }: any) => before !== null);
    expect(pairs).toEqual([{ role: 'AFTER', before: { role: 'BEFORE' } }]);
    const files = await readdir(store.folder, { recursive: true, withFileTypes: true });
    const sizes = await Promise.all(
      files.filter((one) => one.isFile()).map(async (one) => stat(join(one.parentPath, one.name))),
    );
    expect(sizes.length).toBeGreaterThanOrEqual(count);
    expect(sizes.reduce((sum, { size }) => sum + size, 0)).toBeLessThan(1_000_000);
    await rm(store.folder, { recursive: true, force: true });
  });

  it('is refused by a collection that holds items, with what to do', async () => {
    await expect(loadDemo(api.database, folder, new Date(api.nowMs))).rejects.toThrow(
      /holds 27 items already.*REGLOW_DATA=/,
    );
  });
});
