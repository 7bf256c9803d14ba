import { existsSync, rmSync } from 'node:fs';
import { cp, mkdtemp, rm } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { serveApi } from '../../src/api/serveApi.js';
import type { Database } from '../../src/db/database.js';
import { AttachmentStore } from '../../src/features/attachments/attachmentStore.js';
import { loadDemo } from '../../src/features/demo/loadDemo.js';
import { loadDemoPictures } from '../../src/features/demo/pictures/loadDemoPictures.js';
import { seedFolder } from '../../src/features/hazards/seedFolder.js';
import { packageFolder } from '../../src/features/packageFolder.js';
import { reads } from '../../src/features/reads.js';
import { emptyCollection, openedCollection } from './openedCollection.js';

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
  const { database, drop } = isEmpty
    ? await emptyCollection('sqlite')
    : await demoWithPictures(attachmentsFolder);
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

let pictures: Promise<string> | undefined;

/** As of now; loaded once a worker, with its files, and copied. */
async function demoWithPictures(attachmentsFolder: string) {
  pictures ??= mkdtemp(join(tmpdir(), 'reglow-test-pictures-'));
  const original = await pictures;
  const collection = await openedCollection('sqlite', 'demo with pictures', async (database) => {
    process.once('exit', () => {
      rmSync(original, { recursive: true, force: true });
    });
    const [folder, now] = [seedFolder('demo'), new Date()];
    await loadDemo(database, folder, now);
    await loadDemoPictures(database, new AttachmentStore(original), folder, { now, reads });
  });
  await cp(original, attachmentsFolder, { recursive: true });
  return collection;
}
