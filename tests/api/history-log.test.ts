import { generateKeyPairSync } from 'node:crypto';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { queryInWork } from '../../src/db/queryInWork.js';
import { signHead } from '../../src/features/history/signHead.js';
import { verifyCollection } from '../../src/features/history/verifyCollection.js';
import { openCollection } from '../../src/features/openCollection.js';
import { carried } from '../support/carried.js';
import { demoCollection } from '../support/demoCollection.js';
import { testApi, type TestApi } from '../support/testApi.js';

const act = { action: 'test', actorId: null, now: '2026-06-01T12:00:00.000Z' };

describe.each(['sqlite', 'postgres'] as const)('the log on %s', (engine) => {
  let api: TestApi;
  beforeAll(async () => {
    api = await testApi(engine, demoCollection(engine));
  }, 120_000);
  afterAll(() => api.close());

  const verify = () => verifyCollection(api.database);
  /** As somebody would who has the database and not the program. */
  const meddle = (sql: string, parameters: (string | number | null)[] = []) =>
    api.database.write(act, async (work) => {
      const rows = await queryInWork<Record<string, any>>(work, sql, parameters);
      return rows;
    });
  /** Meddles, looks what is found, and puts it back. */
  async function foundAfter(
    sql: string,
    back: string,
  ): Promise<Awaited<ReturnType<typeof verify>>> {
    await meddle(sql);
    try {
      return await verify();
    } finally {
      await meddle(back);
    }
  }

  it('fits from the first entry to the last, and every record is as the log says', async () => {
    const { log, recordFaults, recordsChecked } = await verify();
    expect([log.fault, recordFaults]).toEqual([null, []]);
    expect(log.checked).toBeGreaterThan(1000);
    expect(recordsChecked).toBeGreaterThan(500);
  }, 60_000);

  it('stays one chain when many write at once', async () => {
    const before = (await verify()).log.checked;
    await Promise.all(
      Array.from({ length: 20 }, (_, index) =>
        carried(api, 'createPlace', { name: `Shelf ${index}` }, 'place'),
      ),
    );
    const { log, recordFaults } = await verify();
    expect([log.fault, recordFaults, log.checked]).toEqual([null, [], before + 20]);
  }, 60_000);

  it('names the first entry in which a byte was changed', async () => {
    const [entry] = await meddle(
      `SELECT sequence AS "sequence", "after" AS "after" FROM change
       WHERE sequence > 100 AND record_table = 'finding' ORDER BY sequence LIMIT 1`,
    );
    const altered = String(entry?.['after']).replace('"note":"', '"note":"X');
    const put = 'UPDATE change SET "after" = ? WHERE sequence = ?';
    await meddle(put, [altered, entry?.['sequence']]);
    const { log } = await verify();
    await meddle(put, [entry?.['after'], entry?.['sequence']]);
    expect(log.fault?.sequence).toBe(Number(entry?.['sequence']));
    expect(log.fault?.why).toContain('of finding');
    expect((await verify()).log.fault).toBeNull();
  }, 60_000);

  it('misses an entry that was taken out, and one that was put in', async () => {
    const gone = await foundAfter(
      'UPDATE change SET sequence = -7 WHERE sequence = 200',
      'UPDATE change SET sequence = 200 WHERE sequence = -7',
    );
    expect(gone.log.fault).toEqual({ sequence: 200, why: 'this entry is missing' });
    const insert = `INSERT INTO change (id, changed_at, record_table, record_id, action)
      VALUES ('01900000-0000-7000-8000-0000000000ff', '2026-01-01T00:00:00.000Z', 'item', 'x', 'y')`;
    const added = await foundAfter(
      insert,
      `DELETE FROM change WHERE id = '01900000-0000-7000-8000-0000000000ff'`,
    );
    expect(added.log.fault?.why).toBe('1 entries stand outside the chain');
  }, 60_000);

  it('finds a record that was changed, added or taken away behind its back', async () => {
    const [item] = await meddle(`SELECT id AS "id" FROM item WHERE inventory_number = 'R-003'`);
    const id = String(item?.['id']);
    const changed = await foundAfter(
      `UPDATE item SET inventory_number = 'R-0O3' WHERE inventory_number = 'R-003'`,
      `UPDATE item SET inventory_number = 'R-003' WHERE inventory_number = 'R-0O3'`,
    );
    expect(changed.recordFaults).toEqual([
      { table: 'item', id, why: 'it is not as the log says: inventoryNumber' },
    ]);
    const place = await carried(api, 'createPlace', { name: 'Loft' }, 'place');
    const placeId = place.id.slice('Place_'.length);
    const copy = `INSERT INTO place (id, version, recorded_at, changed_at, name)
      VALUES ('${placeId}', 1, '2026-06-01T12:00:00.000Z', '2026-06-01T12:00:00.000Z', 'Loft')`;
    const gone = await foundAfter(`DELETE FROM place WHERE id = '${placeId}'`, copy);
    expect(gone.recordFaults).toEqual([
      { table: 'place', id: placeId, why: 'the log knows it, and it is not there' },
    ]);
    const unknown = copy.replaceAll(placeId, '01900000-0000-7000-8000-0000000000ee');
    const added = await foundAfter(
      unknown,
      `DELETE FROM place WHERE id = '01900000-0000-7000-8000-0000000000ee'`,
    );
    expect(added.recordFaults[0]?.why).toBe('the log does not know it');
  }, 60_000);

  it('holds a head that the owner signed against what the log says later', async () => {
    const { privateKey } = generateKeyPairSync('ed25519');
    const head = await api.database.write(act, (work) => signHead(work, privateKey));
    await carried(api, 'createPlace', { name: 'After signing' }, 'place');
    const whys = async (printed = head) =>
      (await verifyCollection(api.database, [printed])).heads.map(({ why }) => why);
    expect(await whys()).toEqual([null, null]);
    expect((await whys({ ...head, entryHash: 'f'.repeat(64) }))[1]).toBe(
      'its signature does not fit',
    );
    const sequence = 1_000_000;
    const { sign } = await import('node:crypto');
    const { headStatement } = await import('../../src/features/history/headStatement.js');
    const signed = (other: object) => {
      const statement = { ...head, ...other };
      const signature = sign(null, headStatement(statement), privateKey).toString('base64');
      return { ...statement, signature };
    };
    expect((await whys(signed({ sequence })))[1]).toMatch(/what came after was cut off/);
    expect((await whys(signed({ entryHash: 'e'.repeat(64) })))[1]).toMatch(/says something else/);
  }, 60_000);

  it('lets a name be taken out of the history without breaking the chain', async () => {
    const party = await carried(
      api,
      'createParty',
      { kind: 'PERSON', name: 'Dagny Overlook', note: 'Kept the shop' },
      'party',
      '{ id version }',
    );
    const fields = { recordId: party.id, fields: ['name'], reason: 'Asked to be forgotten' };
    const redact = `mutation ($input: RedactHistoryInput!) { redactHistory(input: $input) {
      entries problems { message path } } }`;
    const early = (await api.ask(redact, { input: fields })).redactHistory;
    expect(early.problems[0].message).toMatch(/says in “name” still, or again/);
    const head = async () => (await verify()).log.head;
    await carried(api, 'changeParty', { id: party.id, version: 1, name: 'A seller' }, 'party');
    // The name put back: taken out of the log it would stand in the record still.
    const again = { id: party.id, version: 2, name: 'Dagny Overlook' };
    await carried(api, 'changeParty', again, 'party');
    expect((await api.ask(redact, { input: fields })).redactHistory.entries).toBe(0);
    await carried(api, 'changeParty', { ...again, version: 3, name: 'Some seller' }, 'party');
    const before = await head();
    const { redactHistory } = await api.ask(redact, { input: fields });
    expect(redactHistory).toEqual({ entries: 4, problems: [] });
    const { log, recordFaults } = await verify();
    expect([log.fault, recordFaults]).toEqual([null, []]);
    expect(log.head.sequence).toBe(before.sequence + 1);
    const id = party.id.slice('Party_'.length);
    const kept = await meddle(
      `SELECT "before" AS "before", "after" AS "after", salt AS "salt", redacted AS "redacted"
       FROM change WHERE record_id = '${id}'`,
    );
    expect(JSON.stringify(kept)).not.toContain('Dagny');
    expect(JSON.stringify(kept)).toContain('Kept the shop');
    // What is left can still not be altered.
    const altered = await foundAfter(
      `UPDATE change SET "after" = replace("after", 'Kept the shop', 'Kept the shoe') WHERE record_id = '${id}'`,
      `UPDATE change SET "after" = replace("after", 'Kept the shoe', 'Kept the shop') WHERE record_id = '${id}'`,
    );
    expect(altered.log.fault).not.toBeNull();
  }, 60_000);

  it('chains what was recorded before there was a chain, when it is first opened', async () => {
    await meddle('DELETE FROM signed_head');
    await meddle(`DELETE FROM change WHERE record_table = 'signed_head'`);
    await meddle(
      'UPDATE change SET sequence = NULL, salt = NULL, entry_hash = NULL WHERE redacted IS NULL',
    );
    await meddle('DELETE FROM change WHERE redacted IS NOT NULL');
    await meddle(`DELETE FROM party WHERE name = 'Some seller'`);
    await api.database.close();
    api.database = await openCollection(api.url);
    const { log, recordFaults } = await verify();
    expect([log.fault, recordFaults]).toEqual([null, []]);
    expect(log.checked).toBeGreaterThan(1000);
  }, 120_000);
});
