import type { Database } from '../../db/database.js';
import { queryInWork } from '../../db/queryInWork.js';
import { Refusal } from '../../db/refusal.js';
import type { UnitOfWork } from '../../db/unitOfWork.js';
import { readDemoFiles } from './demoFiles.js';
import { DemoNames } from './demoNames.js';
import { eventsOfFile } from './eventsOfFile.js';
import { itemsOfFile } from './itemsOfFile.js';
import { setTheScene } from './setTheScene.js';
import { storyClock } from './storyClock.js';
import { tellStory } from './tellStory.js';

export interface DemoLoaded {
  /** How many records of each table were written. */
  counts: ReadonlyMap<string, number>;
  events: number;
}

/**
 * Loads the demo collection into an empty database, event by event, each at its own instant in the
 * history; all of it or nothing.
 * @param now the instant of loading; its day in the collection's zone becomes the reference day.
 * @throws DemoProblem naming the file when one is broken; Refusal when items are there already.
 */
export async function loadDemo(database: Database, folder: string, now: Date): Promise<DemoLoaded> {
  const files = readDemoFiles(folder);
  const { clock, begunAt } = storyClock(files, folder, now);
  const names = new DemoNames();
  const happenings = [
    {
      at: clock.instant(begunAt),
      action: 'setTheScene',
      where: 'The scene',
      play: (work: UnitOfWork) => setTheScene(work, names, files),
    },
    ...files.flatMap((file) => itemsOfFile(file, clock, names)),
    ...files.flatMap((file) => eventsOfFile(file, clock, names)),
  ];
  const act = { action: 'loadDemo', actorId: null, now: now.toISOString() };
  const writes = await database.write(act, async (work) => {
    await refuseItems(work);
    return tellStory(work, happenings);
  });
  const counts = new Map<string, number>();
  for (const { table, before } of writes) {
    if (before === null) counts.set(table, (counts.get(table) ?? 0) + 1);
  }
  return { counts, events: happenings.length };
}

async function refuseItems(work: UnitOfWork): Promise<void> {
  const [row] = await queryInWork<{ count: number | string }>(
    work,
    'SELECT COUNT(*) AS "count" FROM item',
  );
  const count = Number(row?.count ?? 0);
  if (count === 0) return;
  throw Refusal.conflict(
    `This collection holds ${count} ${count === 1 ? 'item' : 'items'} already; the demo is only loaded into an empty one. ` +
      'Give it a folder of its own: REGLOW_DATA=./demo-data npm run demo, then REGLOW_DATA=./demo-data npm start.',
  );
}
