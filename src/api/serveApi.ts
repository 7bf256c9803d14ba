import { createServer as createHttpServer, type Server } from 'node:http';
import { expressMiddleware } from '@as-integrations/express5';
import express from 'express';
import helmet from 'helmet';
import type { Database } from '../db/database.js';
import { AttachmentStore } from '../features/attachments/attachmentStore.js';
import { reads } from '../features/reads.js';
import { buildApiSchema } from './buildApiSchema.js';
import { answerKnown, takeEarlyRead } from './answerKnown.js';
import { answerBrokenBody } from './answerBrokenBody.js';
import { createServer } from './createServer.js';
import { downloadProvenance } from './downloadProvenance.js';
import { headersOf } from './headersOf.js';
import type { ApiContext } from './kit/apiContext.js';
import { knownHosts } from './knownHosts.js';
import { KnownQueries } from './knownQueries.js';
import { endSlowRequests } from './endSlowRequests.js';
import { refuseForeignHosts } from './refuseForeignHosts.js';
import { servePages } from './servePages.js';
import { serveAttachments } from './serveAttachments.js';
import { serveDossiers } from './serveDossiers.js';
import { serveDownloads } from './serveDownloads.js';
import { serveSchedules } from './serveSchedules.js';
import { serveSubscriptions } from './serveSubscriptions.js';
import { serveWaysOut } from './waysOut/serveWaysOut.js';
import type { ErrorLog } from './showError.js';

export interface ServeOptions {
  host: string;
  port: number;
  /** Names beside the loopback's under which the server may be asked. */
  allowedHosts: readonly string[];
  /** Folder in which photographs and papers are kept. */
  attachmentsFolder: string;
  clock: () => number;
  log: ErrorLog;
  /** Where the dashboard's built files lie; without it only the API is served. */
  pagesFolder?: string;
}

export interface RunningApi {
  url: string;
  close(): Promise<void>;
}

/** Bytes. */
const largestBody = 1_048_576;
/** Ten minutes, in milliseconds: the largest file over a slow radio link in the house. */
const longestUpload = 600_000;
/** Milliseconds that a question may take to arrive. */
const longestQuestion = 30_000;

const greetingAt = (
  host: string,
): string => `Reglow is here. It is asked at /graphql, for instance so:

  curl ${host}/graphql -H 'content-type: application/json' \\
    -d '{"query": "{ rigs { nodes { inventoryNumber name readiness { level } } } }"}'

The README has more questions; schema/schema.graphql describes everything that can be asked and done.
`;

/** Nothing that the server's pages show comes from another machine. */
const contentPolicy = {
  defaultSrc: ["'self'"],
  fontSrc: ["'self'"],
  // Pictures that a person has just taken are shown before they are sent.
  imgSrc: ["'self'", 'blob:'],
  // The library of accessible parts writes a style element of its own.
  styleSrc: ["'self'", "'unsafe-inline'"],
  upgradeInsecureRequests: null,
};

/** Serves the API of an open collection over HTTP. */
export async function serveApi(database: Database, options: ServeOptions): Promise<RunningApi> {
  const { clock, attachmentsFolder } = options;
  const contextNow = (): ApiContext => contextOf(database, clock(), attachmentsFolder);
  const schema = await buildApiSchema();
  const queries = new KnownQueries(schema);
  const apollo = createServer(schema, options.log, queries);
  await apollo.start();
  const app = express();
  app.disable('x-powered-by');
  const protect = helmet({ contentSecurityPolicy: { directives: contentPolicy } });
  app.use(protect);
  app.use(refuseForeignHosts(options.allowedHosts));
  const endSlow = endSlowRequests(longestQuestion);
  app.use(
    '/graphql',
    endSlow,
    takeEarlyRead,
    express.json({ limit: largestBody }),
    expressMiddleware(apollo, {
      context: () => Promise.resolve(contextNow()),
    }),
  );
  app.use(serveWaysOut({ apollo, schema, contextNow }));
  app.get('/provenance/:file', downloadProvenance(database, options.clock));
  app.use(
    '/attachments',
    serveAttachments(new AttachmentStore(attachmentsFolder), () => Promise.resolve(contextNow())),
  );
  if (options.pagesFolder !== undefined) app.use(servePages(options.pagesFolder));
  app.use(
    '/download',
    serveDossiers(contextNow),
    serveSchedules(contextNow),
    serveDownloads(contextNow),
  );
  app.get('/', (request, response) => {
    response.type('text/plain').send(greetingAt(request.headers.host ?? ''));
  });
  app.use(answerBrokenBody(options.log));
  const answer = answerKnown({
    schema,
    queries,
    contextNow,
    isKnownHost: knownHosts(options.allowedHosts),
    largestBody,
    endSlow,
    headers: headersOf(protect),
    rest: app,
  });
  const http = createHttpServer({ requestTimeout: longestUpload, headersTimeout: 10_000 }, answer);
  const subscriptions = serveSubscriptions(http, schema, {
    allowedHosts: options.allowedHosts,
    log: options.log,
    context: () => liveContextOf(database, clock, attachmentsFolder),
  });
  const port = await listening(http, options);
  return {
    url: `http://${options.host.includes(':') ? `[${options.host}]` : options.host}:${port}`,
    close: async () => {
      await subscriptions.close();
      await new Promise<void>((resolve) => {
        http.close(() => {
          resolve();
        });
        http.closeIdleConnections();
      });
      await apollo.stop();
    },
  };
}

export const contextOf = (
  database: Database,
  nowMs: number,
  attachmentsFolder: string | null = null,
): ApiContext => ({ database, nowMs, actorId: null, attachmentsFolder, reads });

/** A subscription goes on for hours: each of its events has a "now" of its own. */
export function liveContextOf(
  database: Database,
  clock: () => number,
  attachmentsFolder: string | null = null,
): ApiContext {
  return {
    ...contextOf(database, clock(), attachmentsFolder),
    get nowMs() {
      return clock();
    },
  };
}

function listening(http: Server, { host, port }: ServeOptions): Promise<number> {
  return new Promise((resolve, reject) => {
    http.once('error', reject);
    http.listen(port, host, () => {
      const address = http.address();
      resolve(typeof address === 'object' && address ? address.port : port);
    });
  });
}
