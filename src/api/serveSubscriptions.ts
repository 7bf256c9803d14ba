import { STATUS_CODES, type IncomingMessage, type Server } from 'node:http';
import type { Duplex } from 'node:stream';
import { GraphQLError, type GraphQLSchema } from 'graphql';
import { useServer } from 'graphql-ws/use/ws';
import { WebSocketServer } from 'ws';
import { knownHosts } from './knownHosts.js';
import type { ApiContext } from './kit/apiContext.js';
import { readSubscription } from './readSubscription.js';
import { whyForeignHost } from './refuseForeignHosts.js';
import { showError, type ErrorLog } from './showError.js';

interface SubscriptionOptions {
  allowedHosts: readonly string[];
  log: ErrorLog;
  context: () => ApiContext;
}

const largestMessageBytes = 64 * 1024;
const mostSubscriptions = 20;
const mostConnections = 200;
const initWithinMs = 3000;

/**
 * Answers subscriptions at /graphql over graphql-transport-ws. Apollo's plugins do not run here,
 * so what bounds a query over HTTP is applied by `readSubscription`.
 */
export function serveSubscriptions(
  http: Server,
  schema: GraphQLSchema,
  { allowedHosts, log, context }: SubscriptionOptions,
): { close(): Promise<void> } {
  const sockets = new WebSocketServer({ noServer: true, maxPayload: largestMessageBytes });
  const showKnown = showError(log);
  const show = (error: GraphQLError) => {
    const known = withCode(error);
    return showKnown(known.toJSON(), known);
  };
  const server = useServer(
    {
      connectionInitWaitTimeout: initWithinMs,
      onSubscribe: ({ subscriptions }, _id, payload) =>
        readSubscription(schema, payload, {
          isOneTooMany: Object.keys(subscriptions).length > mostSubscriptions,
        }),
      context,
      onError: (_connection, _id, _payload, errors) => errors.map(show),
      onNext: (_connection, _id, _payload, _args, result) => ({
        data: result.data ?? null,
        ...(result.errors && { errors: result.errors.map(show) }),
      }),
      isProd: true,
    },
    sockets,
  );
  const isKnown = knownHosts(allowedHosts);
  http.on('upgrade', (request: IncomingMessage, socket: Duplex, head: Buffer) => {
    const { host } = request.headers;
    if (!isKnown(host)) refuse(socket, 421, whyForeignHost);
    else if (!isOwnPage(request)) {
      refuse(socket, 403, 'Only a page that this server itself has sent may open a socket to it.');
    } else if (pathOf(request) !== '/graphql') {
      refuse(socket, 404, 'Subscriptions are answered at /graphql.');
    } else if (sockets.clients.size >= mostConnections) {
      refuse(socket, 503, `${mostConnections} windows are connected, which is the most.`);
    } else {
      sockets.handleUpgrade(request, socket, head, (opened) => {
        sockets.emit('connection', opened, request);
        // The library prints every broken message to the console, which anyone could flood.
        opened.removeAllListeners('error').on('error', () => undefined);
      });
    }
  });
  return {
    close: async () => {
      await server.dispose();
    },
  };
}

/** What graphql itself finds wrong with variables carries no code; over HTTP Apollo gives it one. */
const withCode = (error: GraphQLError): GraphQLError =>
  error.path !== undefined || error.extensions['code'] !== undefined
    ? error
    : new GraphQLError(error.message, { extensions: { code: 'BAD_USER_INPUT' } });

/**
 * The same-origin rule does not hold for sockets: any page may open one to this machine, and its
 * browser says only in `Origin` whose page it was. Programs that are no browser send none.
 */
function isOwnPage({ headers: { origin, host } }: IncomingMessage): boolean {
  if (origin === undefined) return true;
  try {
    return new URL(origin).host === host?.toLowerCase();
  } catch {
    return false;
  }
}

const pathOf = (request: IncomingMessage): string => (request.url ?? '').split('?')[0] ?? '';

function refuse(socket: Duplex, status: number, sentence: string): void {
  const body = `${sentence}\n`;
  socket.on('error', () => undefined);
  socket.end(
    `HTTP/1.1 ${status} ${STATUS_CODES[status] ?? ''}\r\nConnection: close\r\n` +
      `Content-Type: text/plain; charset=utf-8\r\nContent-Length: ${Buffer.byteLength(body)}\r\n\r\n${body}`,
  );
}
