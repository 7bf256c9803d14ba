import { existsSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { serveApi } from '../../src/api/serveApi.js';
import type { Database } from '../../src/db/database.js';
import { loadDemo } from '../../src/features/demo/loadDemo.js';
import { seedFolder } from '../../src/features/hazards/seedFolder.js';
import { openCollection } from '../../src/features/openCollection.js';
import { packageFolder } from '../../src/features/packageFolder.js';
import { freshDatabase } from './freshDatabase.js';

export interface ServedDemo {
  /** http://127.0.0.1:… */
  url: string;
  database: Database;
  close(): Promise<void>;
}

/**
 * The demo collection with its pages, served on a free loopback port by the real clock, as a person
 * has it. `isEmpty` leaves the collection without anything in it.
 */
export async function servedDemo({ isEmpty = false } = {}): Promise<ServedDemo> {
  const pagesFolder = packageFolder('dist-web');
  if (!existsSync(join(pagesFolder, 'index.html'))) {
    throw new Error('The pages are not built: run `npm run build` first.');
  }
  const { url: databaseUrl, drop } = await freshDatabase('sqlite');
  const database = await openCollection(databaseUrl);
  if (!isEmpty) await loadDemo(database, seedFolder('demo'), new Date());
  const running = await serveApi(database, {
    host: '127.0.0.1',
    port: 0,
    allowedHosts: [],
    pagesFolder,
    attachmentsFolder: join(tmpdir(), `reglow-test-attachments-${process.pid}`),
    clock: () => Date.now(),
    log: (id, error) => {
      console.error(id, error);
    },
  });
  return {
    url: running.url,
    database,
    close: async () => {
      await running.close();
      await database.close();
      await drop();
    },
  };
}
