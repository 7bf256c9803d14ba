import Sqlite from 'better-sqlite3';
import { DataSource, type DataSourceOptions } from 'typeorm';
import { afterEach, describe, expect, it } from 'vitest';
import { migrations } from '../../src/db/migrations.js';
import { openDatabase } from '../../src/db/openDatabase.js';
import { SnakeNaming } from '../../src/db/snakeNaming.js';
import { accessEntities, computedEntities, recordEntities } from '../../src/features/entities.js';
import { freshDatabase } from '../support/freshDatabase.js';

type MigrationClass = (typeof migrations)[number];
const entities = [...recordEntities, ...computedEntities, ...accessEntities];

describe('the order of archives', () => {
  it('has each table once', () => {
    expect(entities.filter((entity, at) => entities.indexOf(entity) !== at)).toEqual([]);
  });
});

describe.each(['sqlite', 'postgres'] as const)('migrations on %s', (engine) => {
  const drops: (() => Promise<void>)[] = [];
  afterEach(async () => {
    for (const drop of drops.splice(0)) await drop();
  });

  async function freshSource(steps: readonly MigrationClass[]): Promise<[DataSource, string]> {
    const { url, drop } = await freshDatabase(engine);
    drops.push(drop);
    return [await open(url, steps), url];
  }

  async function open(url: string, steps: readonly MigrationClass[]): Promise<DataSource> {
    const shared = {
      entities: [...entities],
      migrations: [...steps],
      migrationsTransactionMode: 'all' as const,
      namingStrategy: new SnakeNaming(),
    };
    const options: DataSourceOptions =
      engine === 'sqlite'
        ? { ...shared, type: 'better-sqlite3', database: url.slice('sqlite:'.length) }
        : { ...shared, type: 'postgres', url };
    const source = await new DataSource(options).initialize();
    await source.runMigrations();
    return source;
  }

  it('end in exactly the tables that the entities describe', async () => {
    const [source] = await freshSource(migrations);
    const { upQueries } = await source.driver.createSchemaBuilder().log();
    await source.destroy();
    expect(upQueries.map(({ query }) => query)).toEqual([]);
  });

  it('keep every row when the last step is added to a collection in use', async () => {
    const [source, url] = await freshSource(migrations.slice(0, -1));
    const now = '2026-01-01T00:00:00.000Z';
    const kept = `'${now}', '${now}'`;
    await source.query(
      `INSERT INTO place (id, version, recorded_at, changed_at, name) VALUES ('p1', 1, ${kept}, 'Attic')`,
    );
    await source.query(
      `INSERT INTO item (id, version, recorded_at, changed_at, kind, inventory_number, place_id)
       VALUES ('i1', 1, ${kept}, 'RIG', 'R-001', 'p1'), ('i2', 1, ${kept}, 'ACCESSORY', 'A-001', 'p1')`,
    );
    await source.query(
      `INSERT INTO item_move (id, version, recorded_at, changed_at, item_id, to_place_id, moved_at)
       VALUES ('m1', 1, ${kept}, 'i1', 'p1', '${now}')`,
    );
    await source.destroy();
    const upgraded = await open(url, migrations);
    const count = async (table: string) =>
      Number((await upgraded.query<{ n: unknown }[]>(`SELECT COUNT(*) AS n FROM ${table}`))[0]?.n);
    expect([await count('place'), await count('item'), await count('item_move')]).toEqual([
      1, 2, 1,
    ]);
    await upgraded.destroy();
  });

  it('can all be taken back, leaving nothing', async () => {
    const [source] = await freshSource(migrations);
    for (let left = migrations.length; left > 0; left--)
      await source.undoLastMigration({ transaction: 'all' });
    const tables = await source.query<{ name: string }[]>(
      engine === 'sqlite'
        ? `SELECT name FROM sqlite_master WHERE type = 'table' AND name NOT LIKE 'sqlite_%'`
        : `SELECT table_name AS name FROM information_schema.tables WHERE table_schema = 'public'`,
    );
    await source.destroy();
    expect(tables.map(({ name }) => name)).toEqual(['migrations']);
  });

  it('run once when two programs open a new collection at the same time', async () => {
    const { url, drop } = await freshDatabase(engine);
    drops.push(drop);
    const opened = await Promise.all(
      [1, 2].map(() =>
        openDatabase({
          url,
          entities: [...entities],
          migrations: [...migrations],
          beforeCommit: () => Promise.resolve(),
        }),
      ),
    );
    const rows = await opened[0]?.reader.rows<{ n: number }>(
      'SELECT COUNT(*) AS n FROM migrations',
    );
    await Promise.all(opened.map((database) => database.close()));
    expect(rows).toEqual([{ n: migrations.length }]);
  });
});

describe('an SQLite file', () => {
  it('is in WAL mode with foreign keys held, so that readers never wait', async () => {
    const { url, drop } = await freshDatabase('sqlite');
    const database = await openDatabase({
      url,
      entities: [...entities],
      migrations: [...migrations],
      beforeCommit: () => Promise.resolve(),
    });
    const [foreignKeys] = await database.dataSource.query<object[]>('PRAGMA foreign_keys');
    await database.close();
    const raw = new Sqlite(url.slice('sqlite:'.length), { readonly: true });
    const mode: unknown = raw.pragma('journal_mode', { simple: true });
    raw.close();
    await drop();
    expect([mode, foreignKeys]).toEqual(['wal', { foreign_keys: 1 }]);
  });
});
