import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { queryInWork } from '../../src/db/queryInWork.js';
import { openCollection } from '../../src/features/openCollection.js';
import { newRig, record, send } from '../support/lotStory.js';
import { testApi, type TestApi } from '../support/testApi.js';

describe.each(['sqlite', 'postgres'] as const)(
  'what an earlier version computed, on %s',
  (engine) => {
    let api: TestApi;
    let id = '';
    beforeAll(async () => {
      api = await testApi(engine);
      id = (await record(api, { lines: [newRig()] })).lines[0]?.item.id;
      await send(api, 'lendItem', 'loan', 'id', {
        itemId: id,
        borrower: { name: 'The club' },
        lentOn: '2026-05-10',
      });
    }, 60_000);
    afterAll(() => api.close());

    const sql = (text: string) =>
      api.database.write(
        { action: 'test', actorId: null, now: '2026-06-01T12:00:00.000Z' },
        (work) => queryInWork<Record<string, any>>(work, text),
      );
    const reopen = async (): Promise<void> => {
      await api.database.close();
      api.database = await openCollection(api.url, () => api.nowMs);
    };
    const blockers = async (): Promise<string[]> =>
      (
        await api.ask(
          'query ($id: ID!) { node(id: $id) { ... on Rig { readiness { blockers { code } } } } }',
          { id },
        )
      ).node.readiness.blockers.map(({ code }: { code: string }) => code);
    const entries = async (): Promise<number> =>
      Number((await sql('SELECT count(*) AS "count" FROM change'))[0]?.['count']);

    it('stands until this version computes it, and that is when the collection is opened', async () => {
      expect(await blockers()).toContain('NOT_IN_HAND');
      const before = await entries();
      await sql('DELETE FROM item_standing');
      await reopen();
      expect(await sql('SELECT item_id FROM item_standing')).toEqual([]);
      // As an upgrade finds it: computed by another version.
      await sql('UPDATE computed_version SET version = version - 1');
      await reopen();
      expect(await blockers()).toContain('NOT_IN_HAND');
      expect(await entries()).toBe(before);
    }, 60_000);

    it('is computed too where no version was written down, once though two open it at once', async () => {
      await sql('DELETE FROM item_standing');
      await sql('DELETE FROM computed_version');
      // Two connections of one process cannot wait for each other on SQLite.
      const openings = engine === 'sqlite' ? 1 : 2;
      const opened = await Promise.all(
        Array.from({ length: openings }, () => openCollection(api.url)),
      );
      for (const database of opened) await database.close();
      expect(await sql('SELECT subject FROM computed_version')).toHaveLength(1);
      expect(await blockers()).toContain('NOT_IN_HAND');
    }, 60_000);
  },
);
