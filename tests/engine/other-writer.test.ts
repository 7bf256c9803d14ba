import Sqlite from 'better-sqlite3';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { Refusal } from '../../src/db/refusal.js';
import { waitForWriter } from '../../src/db/waitForWriter.js';
import { openCollection } from '../../src/features/openCollection.js';
import { testApi, type TestApi } from '../support/testApi.js';

const createPlace = `mutation ($input: CreatePlaceInput!) {
  createPlace(input: $input) { place { name } problems { message } }
}`;

describe('while another program writes to the same SQLite file', () => {
  let api: TestApi;
  let other: Sqlite.Database;
  beforeAll(async () => {
    api = await testApi('sqlite');
    other = new Sqlite(api.url.slice('sqlite:'.length));
  });
  afterAll(async () => {
    other.close();
    await api.close();
  });
  const holdFor = (ms: number): Promise<void> => {
    other.exec('BEGIN IMMEDIATE');
    return new Promise((resolve) => {
      setTimeout(() => {
        other.exec('COMMIT');
        resolve();
      }, ms);
    });
  };

  it('a write waits its turn, and reading goes on meanwhile', async () => {
    const held = holdFor(1_500);
    let isWritten = false;
    const written = api.ask(createPlace, { input: { name: 'Loft' } }).finally(() => {
      isWritten = true;
    });
    let reads = 0;
    for (let n = 0; n < 5; n++) {
      const { places } = await api.ask('{ places { totalCount } }');
      expect([places.totalCount, isWritten]).toEqual([0, false]);
      reads++;
      await new Promise((resolve) => setTimeout(resolve, 20));
    }
    expect(reads).toBe(5);
    await held;
    expect((await written).createPlace).toEqual({ place: { name: 'Loft' }, problems: [] });
  });

  it('the collection is opened when the other has ended', async () => {
    await api.database.write({ action: 'test', actorId: null, now: '2026-01-01' }, ({ manager }) =>
      manager.query(`UPDATE computed_version SET version = 0`),
    );
    const held = holdFor(1_000);
    const second = await openCollection(api.url);
    await held;
    const kept = await second.reader.rows('SELECT version FROM computed_version WHERE version > 0');
    expect(kept).toHaveLength(1);
    await second.close();
  });

  it('is refused in words when the other does not end', async () => {
    const busy = Object.assign(new Error('database is locked'), { code: 'SQLITE_BUSY_SNAPSHOT' });
    let tries = 0;
    const asked = waitForWriter(() => {
      tries++;
      return Promise.reject(busy);
    }, 250);
    await expect(asked).rejects.toThrow(Refusal);
    await expect(asked).rejects.toThrow('Nothing was changed; try again');
    expect(tries).toBeGreaterThan(1);
    await expect(waitForWriter(() => Promise.reject(new Error('disk full')))).rejects.toThrow(
      'disk full',
    );
  });
});
