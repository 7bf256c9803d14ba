import { existsSync } from 'node:fs';
import { mkdtemp, rm } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { serveApi } from '../../src/api/serveApi.js';
import type { Database } from '../../src/db/database.js';
import { AttachmentStore } from '../../src/features/attachments/attachmentStore.js';
import { loadDemo } from '../../src/features/demo/loadDemo.js';
import { loadDemoPictures } from '../../src/features/demo/pictures/loadDemoPictures.js';
import { seedFolder } from '../../src/features/hazards/seedFolder.js';
import { openCollection } from '../../src/features/openCollection.js';
import { packageFolder } from '../../src/features/packageFolder.js';
import { reads } from '../../src/features/reads.js';
import { freshDatabase } from './freshDatabase.js';

export interface ServedDemo {
  /** http://127.0.0.1:… */
  url: string;
  database: Database;
  /** One question to the API, as another program would ask it; throws when it is refused. */
  ask(query: string, variables?: Record<string, unknown>): Promise<any>;
  /** Stops serving; the collection stays open. */
  stop(): Promise<void>;
  /** Serves again at the same address. */
  startAgain(): Promise<void>;
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
  const attachmentsFolder = await mkdtemp(join(tmpdir(), 'reglow-test-attachments-'));
  const { url: databaseUrl, drop } = await freshDatabase('sqlite');
  const database = await openCollection(databaseUrl);
  if (!isEmpty) {
    const [folder, now] = [seedFolder('demo'), new Date()];
    await loadDemo(database, folder, now);
    const store = new AttachmentStore(attachmentsFolder);
    await loadDemoPictures(database, store, folder, { now, reads });
  }
  const serveAt = (port: number) =>
    serveApi(database, {
      host: '127.0.0.1',
      port,
      allowedHosts: [],
      pagesFolder,
      attachmentsFolder,
      clock: () => Date.now(),
      log: (id, error) => {
        console.error(id, error);
      },
    });
  let running = await serveAt(0);
  const { url } = running;
  return {
    url,
    database,
    ask: async (query, variables = {}) => {
      const answer = await fetch(`${url}/graphql`, {
        method: 'POST',
        headers: { 'content-type': 'application/json' },
        body: JSON.stringify({ query, variables }),
      });
      const { data, errors } = (await answer.json()) as { data?: any; errors?: unknown };
      if (errors) throw new Error(JSON.stringify(errors));
      return data;
    },
    stop: () => running.close(),
    startAgain: async () => {
      running = await serveAt(Number(new URL(url).port));
    },
    close: async () => {
      await running.close();
      await database.close();
      await drop();
      await rm(attachmentsFolder, { recursive: true, force: true });
    },
  };
}
