import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { httpApi, type HttpApi } from '../support/httpApi.js';
import { bareSocket, closeCode, nextMessage } from '../support/socketStory.js';

// Source: "GraphQL over WebSocket Protocol" (graphql-transport-ws), PROTOCOL.md of the `graphql-ws`
// package 6: the close codes that a server must give.
describe('graphql-transport-ws', () => {
  let api: HttpApi;
  let url: string;
  beforeAll(async () => {
    api = await httpApi();
    url = api.url.replace('http:', 'ws:');
  });
  afterAll(() => api.close());

  const init = JSON.stringify({ type: 'connection_init' });
  const subscribe = JSON.stringify({
    type: 'subscribe',
    id: 'one',
    payload: { query: 'subscription { recordsChanged { cursor } }' },
  });
  const acknowledged = async () => {
    const socket = await bareSocket(url);
    const answer = nextMessage(socket);
    socket.send(init);
    expect(await answer).toMatchObject({ type: 'connection_ack' });
    return socket;
  };

  it('closes with 4400 on a message that is none', async () => {
    const socket = await bareSocket(url);
    socket.send('{ this is not JSON');
    expect(await closeCode(socket)).toBe(4400);
    const other = await bareSocket(url);
    other.send(JSON.stringify({ type: 'no such message' }));
    expect(await closeCode(other)).toBe(4400);
  });

  it('closes with 4401 on a subscription before the acknowledgement', async () => {
    const socket = await bareSocket(url);
    socket.send(subscribe);
    expect(await closeCode(socket)).toBe(4401);
  });

  it('closes with 4408 when nobody says connection_init', async () => {
    expect(await closeCode(await bareSocket(url))).toBe(4408);
  });

  it('closes with 4409 on a second subscription under the same id', async () => {
    const socket = await acknowledged();
    socket.send(subscribe);
    socket.send(subscribe);
    expect(await closeCode(socket)).toBe(4409);
  });

  it('closes with 4429 on a second connection_init', async () => {
    const socket = await acknowledged();
    socket.send(init);
    expect(await closeCode(socket)).toBe(4429);
  });

  it('answers a ping, and completes a subscription that is ended', async () => {
    const socket = await acknowledged();
    socket.send(JSON.stringify({ type: 'ping' }));
    expect(await nextMessage(socket)).toEqual({ type: 'pong' });
    socket.send(subscribe);
    socket.send(JSON.stringify({ type: 'complete', id: 'one' }));
    socket.send(JSON.stringify({ type: 'ping' }));
    expect(await nextMessage(socket)).toEqual({ type: 'pong' });
    socket.close(1000);
  });
});
