import { once } from 'node:events';
import { createClient, type Client } from 'graphql-ws';
import { WebSocket } from 'ws';

/** Opens a bare socket, to send what no client would. */
export async function bareSocket(
  url: string,
  headers: Record<string, string> = {},
): Promise<WebSocket> {
  const socket = new WebSocket(url, 'graphql-transport-ws', { headers });
  await once(socket, 'open');
  return socket;
}

/** The code with which the other side closes. */
export async function closeCode(socket: WebSocket): Promise<number> {
  const [code] = (await once(socket, 'close')) as [number];
  return code;
}

export async function nextMessage(socket: WebSocket): Promise<any> {
  const [data] = (await once(socket, 'message')) as [Buffer];
  return JSON.parse(data.toString());
}

/** The HTTP status with which an upgrade is refused. */
export function refusedStatus(url: string, headers: Record<string, string>): Promise<number> {
  return new Promise((resolve, reject) => {
    const socket = new WebSocket(url, 'graphql-transport-ws', { headers });
    socket.on('error', () => undefined);
    socket.on('open', () => {
      reject(new Error('the socket opened'));
    });
    socket.on('unexpected-response', (_request, response) => {
      response.resume();
      resolve(response.statusCode ?? 0);
    });
  });
}

export const socketClient = (url: string): Client =>
  createClient({ url, webSocketImpl: WebSocket, retryAttempts: 0 });

/** What a subscription sends, one answer at a time. */
export const followed = (client: Client, query: string, variables: Record<string, unknown> = {}) =>
  client.iterate<any>({ query, variables });
