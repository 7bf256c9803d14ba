import type { Database } from '../../src/db/database.js';
import type { Engine } from '../../src/db/dialect.js';
import { openCollection } from '../../src/features/openCollection.js';
import { copyOf, originalOf, type FreshDatabase, type Original } from './freshDatabase.js';

export interface OpenedCollection extends FreshDatabase {
  database: Database;
}

const originals = new Map<string, Promise<Original>>();

/** An empty collection of its own, with its schema; `drop` it when it is closed. */
export const emptyCollection = (engine: Engine): Promise<OpenedCollection> =>
  openedCollection(engine, 'empty', () => Promise.resolve());

/**
 * A collection of its own as `fill` left it the first time: a worker fills it once and copies it.
 * @param name the same for the same filling
 */
export async function openedCollection(
  engine: Engine,
  name: string,
  fill: (database: Database) => Promise<void>,
): Promise<OpenedCollection> {
  const key = `${engine} ${name}`;
  const original =
    originals.get(key) ??
    originalOf(engine, async (url) => {
      const database = await openCollection(url);
      await fill(database);
      await database.close();
    });
  originals.set(key, original);
  const { url, drop } = await copyOf(await original);
  return { url, drop, database: await openCollection(url) };
}
