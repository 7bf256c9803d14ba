import type { Engine } from '../../src/db/dialect.js';
import { loadDemo } from '../../src/features/demo/loadDemo.js';
import { seedFolder } from '../../src/features/hazards/seedFolder.js';
import { openedCollection, type OpenedCollection } from './openedCollection.js';

/** The demo collection as of 1 June 2026 at noon, which the tests' clocks show too. */
export const demoCollection = (engine: Engine): Promise<OpenedCollection> =>
  openedCollection(engine, 'demo', async (database) => {
    await loadDemo(database, seedFolder('demo'), new Date('2026-06-01T12:00:00Z'));
  });
