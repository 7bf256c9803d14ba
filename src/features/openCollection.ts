import { openDatabase } from '../db/openDatabase.js';
import type { Database } from '../db/database.js';
import { migrations } from '../db/migrations.js';
import type { UnitOfWork } from '../db/unitOfWork.js';
import { computeWhenOpened } from './computeWhenOpened.js';
import { accessEntities, computedEntities, recordEntities } from './entities.js';
import { appendChangeEvent } from './feed/appendChangeEvent.js';
import { appendHistory } from './history/appendHistory.js';
import { chainWhenOpened } from './history/chainExisting.js';
import { refreshComputed } from './refreshComputed.js';

/** Opens a collection's records with everything that must follow from each write. */
export async function openCollection(
  url: string,
  nowMs: () => number = Date.now,
): Promise<Database> {
  const database = await openDatabase({
    url,
    entities: [...recordEntities, ...computedEntities, ...accessEntities],
    migrations,
    beforeCommit: followUp,
  });
  await chainWhenOpened(database);
  await computeWhenOpened(database, nowMs());
  return database;
}

/** What follows from a unit of work, inside its transaction. */
async function followUp(work: UnitOfWork): Promise<void> {
  const itemIds = await refreshComputed(work);
  // Last, and in this order: each makes other units of work wait until the commit.
  await appendHistory(work);
  await appendChangeEvent(work, itemIds);
}
