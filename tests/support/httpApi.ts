import { mkdtemp, rm } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { serveApi, type RunningApi } from '../../src/api/serveApi.js';
import type { Database } from '../../src/db/database.js';
import type { Engine } from '../../src/db/dialect.js';
import { emptyCollection, type OpenedCollection } from './openedCollection.js';

/** The API over HTTP on a free loopback port, with what it logged. */
export interface HttpApi {
  url: string;
  database: Database;
  attachmentsFolder: string;
  logged: { id: string; error: unknown }[];
  /** Sends one GraphQL request as JSON. */
  post(body: object | string, headers?: Record<string, string>): Promise<Response>;
  close(): Promise<void>;
}

/** @param collection what it is over; an empty one unless said otherwise */
export async function httpApi(
  engine: Engine = 'sqlite',
  collection: Promise<OpenedCollection> = emptyCollection(engine),
): Promise<HttpApi> {
  const { drop, database } = await collection;
  const attachmentsFolder = await mkdtemp(join(tmpdir(), 'reglow-test-attachments-'));
  const logged: HttpApi['logged'] = [];
  const running: RunningApi = await serveApi(database, {
    host: '127.0.0.1',
    attachmentsFolder,
    port: 0,
    allowedHosts: [],
    clock: () => Date.parse('2026-06-01T12:00:00Z'),
    log: (id, error) => logged.push({ id, error }),
  });
  return {
    url: `${running.url}/graphql`,
    database,
    attachmentsFolder,
    logged,
    post: (body, headers = {}) =>
      fetch(`${running.url}/graphql`, {
        method: 'POST',
        headers: { 'content-type': 'application/json', ...headers },
        body: typeof body === 'string' ? body : JSON.stringify(body),
      }),
    close: async () => {
      await running.close();
      await database.close();
      await drop();
      await rm(attachmentsFolder, { recursive: true, force: true });
    },
  };
}
