import { AsyncLocalStorage } from 'node:async_hooks';
import { mkdirSync } from 'node:fs';
import { dirname } from 'node:path';
import type BetterSqlite from 'better-sqlite3';
import { DataSource, type DataSourceOptions, type MixedList } from 'typeorm';
import type { Database } from './database.js';
import type { UnitOfWork } from './unitOfWork.js';
import { addSqliteFunctions } from './addSqliteFunctions.js';
import { migrate } from './migrate.js';
import { postgresReader } from './postgresReader.js';
import { postgresSnapshot } from './postgresSnapshot.js';
import { refusalFromConstraint } from './refusalFromConstraint.js';
import { repeatOnClash } from './repeatOnClash.js';
import { SnakeNaming } from './snakeNaming.js';
import { sqliteReader } from './sqliteReader.js';
import { sqliteSnapshot } from './sqliteSnapshot.js';
import { waitForWriter } from './waitForWriter.js';
import { WriteQueue } from './writeQueue.js';

type Classes = MixedList<new () => object>;

export interface DatabaseSettings {
  /** `sqlite:/path/to/file.sqlite` or `postgres://…`. */
  url: string;
  entities: Classes;
  migrations: Classes;
  /** Runs inside each transaction, after its work (and at each `flush`), before its commit. */
  beforeCommit(work: UnitOfWork): Promise<void>;
}

/** Opens the records and brings their tables up to date. */
export async function openDatabase(settings: DatabaseSettings): Promise<Database> {
  const isSqlite = settings.url.startsWith('sqlite:');
  const path = settings.url.slice('sqlite:'.length);
  if (isSqlite) mkdirSync(dirname(path), { recursive: true });
  const dataSource = new DataSource(isSqlite ? sqlite(settings, path) : postgres(settings));
  await dataSource.initialize();
  await migrate(dataSource, settings.url);
  const reader = isSqlite ? sqliteReader(path) : postgresReader(settings.url);
  const engine = reader.dialect.engine;
  const queue = new WriteQueue();
  const committed = new Set<() => void>();
  // A nested act would wait for the queue that it holds: refuse it instead of hanging.
  const inside = new AsyncLocalStorage<true>();
  return {
    engine,
    dataSource,
    reader,
    write: (act, fn) => {
      if (inside.getStore()) throw new Error('write() within write(): hand down the unit of work');
      const transaction = () =>
        inside.run(true, () =>
          dataSource.transaction(async (manager) => {
            if (isSqlite) await manager.query(takeWriteLock);
            const work: UnitOfWork = {
              ...act,
              manager,
              engine,
              writes: [],
              flush: async () => {
                await settings.beforeCommit(work);
                work.writes.length = 0;
              },
            };
            const result = await fn(work);
            await work.flush();
            return result;
          }),
        );
      const run = isSqlite
        ? queue.run(() => waitForWriter(transaction))
        : repeatOnClash(transaction);
      return run.then(
        (result) => {
          for (const listener of committed) listener();
          return result;
        },
        (error: unknown) => {
          throw refusalFromConstraint(error);
        },
      );
    },
    onCommit: (listener) => {
      // Its own entry even if one function is given twice.
      const entry = () => {
        listener();
      };
      committed.add(entry);
      return () => committed.delete(entry);
    },
    snapshot: (fn) => (isSqlite ? sqliteSnapshot(path, fn) : postgresSnapshot(settings.url, fn)),
    close: async () => {
      await queue.drained();
      await reader.close();
      await dataSource.destroy();
    },
  };
}

/** Changes nothing: a transaction that begins with it either may write or is refused at once. */
const takeWriteLock = 'DELETE FROM migrations WHERE 0';

/** `all`, never `none`: outside a transaction SQLite drops child rows when a table is rebuilt. */
const shared = (settings: DatabaseSettings) => ({
  entities: settings.entities,
  migrations: settings.migrations,
  migrationsTransactionMode: 'all' as const,
  namingStrategy: new SnakeNaming(),
  logging: false,
});

const sqlite = (settings: DatabaseSettings, path: string): DataSourceOptions => ({
  ...shared(settings),
  type: 'better-sqlite3',
  database: path,
  enableWAL: true,
  prepareDatabase: (connection: BetterSqlite.Database) => {
    addSqliteFunctions(connection);
    // While SQLite waits, nothing else goes on here: the longer wait is that of `waitForWriter`.
    connection.pragma('busy_timeout = 100');
    connection.pragma('synchronous = FULL');
  },
});

const postgres = (settings: DatabaseSettings): DataSourceOptions => ({
  ...shared(settings),
  type: 'postgres',
  url: settings.url,
  poolSize: 8,
});
