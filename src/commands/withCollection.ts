import { existsSync } from 'node:fs';
import type { Database } from '../db/database.js';
import { openCollection } from '../features/openCollection.js';
import { CommandFailure } from './commandFailure.js';
import { sqlitePath } from './sqlitePath.js';
import type { Surroundings } from './surroundings.js';

/** Opens the collection, does something with it, and closes it whatever comes. */
export async function withCollection<Result>(
  { config, nowMs }: Surroundings,
  fn: (database: Database) => Promise<Result>,
): Promise<Result> {
  const database = await openCollection(config.databaseUrl, nowMs);
  try {
    return await fn(database);
  } finally {
    await database.close();
  }
}

/** As `withCollection`, where a collection that is not there yet would be of no use. */
export function withExistingCollection<Result>(
  around: Surroundings,
  fn: (database: Database) => Promise<Result>,
): Promise<Result> {
  const path = sqlitePath(around.config);
  if (path !== null && !existsSync(path)) {
    throw new CommandFailure(
      `There is no collection at ${path}: start Reglow once, or check REGLOW_DATABASE and REGLOW_DATA.`,
    );
  }
  return withCollection(around, fn);
}
