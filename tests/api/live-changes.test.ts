import type { Client } from 'graphql-ws';
import { afterAll, afterEach, beforeAll, describe, expect, it } from 'vitest';
import { insertRow } from '../../src/db/insertRow.js';
import { queryInWork } from '../../src/db/queryInWork.js';
import { openCollection } from '../../src/features/openCollection.js';
import { PlaceEntity } from '../../src/features/places/place.entity.js';
import { httpApi, type HttpApi } from '../support/httpApi.js';
import {
  bareSocket,
  closeCode,
  followed,
  refusedStatus,
  socketClient,
} from '../support/socketStory.js';

const changes = `subscription ($after: String) { recordsChanged(after: $after) {
  cursor isEverything action records { id typeName change } itemIds } }`;

describe.each(['sqlite', 'postgres'] as const)(
  'changes in one window, seen in another, on %s',
  (engine) => {
    let api: HttpApi;
    let url: string;
    let rigs = 0;
    const clients: Client[] = [];
    beforeAll(async () => {
      api = await httpApi(engine);
      url = api.url.replace('http:', 'ws:');
    });
    afterEach(async () => {
      for (const client of clients.splice(0)) await client.dispose();
    });
    afterAll(() => api.close());

    const window = () => {
      const client = socketClient(url);
      clients.push(client);
      return client;
    };
    const ask = async (query: string, variables: object = {}) => {
      const answer: any = await (await api.post({ query, variables })).json();
      expect(answer.errors).toBeUndefined();
      return answer.data;
    };
    const cursorNow = async (): Promise<string> => (await ask('{ feedCursor }')).feedCursor;
    const addPlace = async (name: string): Promise<string> =>
      (
        await ask(
          `mutation ($name: String!) { createPlace(input: { name: $name }) { place { id } } }`,
          { name },
        )
      ).createPlace.place.id;
    const addRig = async (): Promise<string> =>
      (
        await ask(
          `mutation { createRig(input: { inventoryNumber: "R-${++rigs}", name: "On the bench" }) { rig { id } } }`,
        )
      ).createRig.rig.id;
    const next = async (events: AsyncIterator<any>) => {
      const { value } = await events.next();
      if (!value?.data) throw new Error(JSON.stringify(value));
      return value.data.recordsChanged;
    };

    it('come within a second, with the records and the items that they bear on', async () => {
      const events = followed(window(), changes, { after: await cursorNow() });
      const rig = await addRig();
      const startedMs = performance.now();
      const event = await next(events);
      expect(performance.now() - startedMs).toBeLessThan(1000);
      expect(event).toMatchObject({ isEverything: false, action: 'createRig', itemIds: [rig] });
      expect(event.records).toContainEqual({ id: rig, typeName: 'Rig', change: 'ADDED' });
    });

    it('are caught up with after a lost connection, each once and in order', async () => {
      const first = window();
      const events = followed(first, changes, { after: await cursorNow() });
      const seen = await addPlace('Seen');
      const { cursor, records } = await next(events);
      expect(records).toEqual([{ id: seen, typeName: 'Place', change: 'ADDED' }]);
      first.terminate();
      const missed = [await addPlace('Missed'), await addPlace('Missed too')];
      const again = followed(window(), changes, { after: cursor });
      const caughtUp = [await next(again), await next(again)];
      expect(caughtUp.map((event) => event.records[0].id)).toEqual(missed);
      const later = await addPlace('Later');
      expect((await next(again)).records[0].id).toBe(later);
    });

    it('come in the order of the commits, however many are written at once', async () => {
      const after = await cursorNow();
      const ids = await Promise.all(
        Array.from({ length: 12 }, (_, index) => addPlace(`Shelf ${index}`)),
      );
      const events = followed(window(), changes, { after });
      const seen: string[] = [];
      while (seen.length < ids.length) seen.push((await next(events)).records[0].id);
      expect(new Set(seen)).toEqual(new Set(ids));
    });

    it('are told of acts of another process too', async () => {
      const events = followed(window(), changes, { after: await cursorNow() });
      const elsewhere = await openCollection(
        engine === 'sqlite'
          ? `sqlite:${String(api.database.dataSource.options.database)}`
          : (api.database.dataSource.options as { url: string }).url,
      );
      const act = { action: 'command', actorId: null, now: '2026-06-01T12:00:00.000Z' };
      const startedMs = performance.now();
      await elsewhere.write(act, (work) =>
        insertRow(work, PlaceEntity, {
          name: 'From the command line',
          withinId: null,
          note: null,
          retiredAt: null,
        }),
      );
      expect(await next(events)).toMatchObject({ action: 'command' });
      expect(performance.now() - startedMs).toBeLessThan(1500);
      await elsewhere.close();
    });

    it('are not told of what was refused', async () => {
      const events = followed(window(), changes, { after: await cursorNow() });
      const { createPlace } = await ask(
        `mutation { createPlace(input: { name: " " }) { problems { code } } }`,
      );
      expect(createPlace.problems).toHaveLength(1);
      const place = await addPlace('Kept');
      expect((await next(events)).records[0].id).toBe(place);
    });

    it('say that everything is to be loaded when the position is not known any more', async () => {
      const old = await cursorNow();
      await api.database.write(
        { action: 'prune', actorId: null, now: '2026-06-01T12:00:00.000Z' },
        (work) =>
          queryInWork(
            work,
            'DELETE FROM change_event WHERE sequence < (SELECT MAX(sequence) FROM change_event)',
          ),
      );
      await addPlace('After the gap');
      await api.database.write(
        { action: 'prune', actorId: null, now: '2026-06-01T12:00:00.000Z' },
        (work) =>
          queryInWork(
            work,
            'DELETE FROM change_event WHERE sequence < (SELECT MAX(sequence) FROM change_event)',
          ),
      );
      const event = await next(followed(window(), changes, { after: old }));
      expect(event).toEqual({
        cursor: await cursorNow(),
        isEverything: true,
        action: null,
        records: [],
        itemIds: [],
      });
    });

    it('show the running timer to both screens, at once and at each change', async () => {
      const rig = await addRig();
      const person = (
        await ask(
          `mutation { createParty(input: { kind: PERSON, name: "Ilse" }) { party { id } } }`,
        )
      ).createParty.party.id;
      const query = `subscription { timerChanged { runningTimers { id item { id } breaks { endedAt } } } }`;
      const screens = [followed(window(), query), followed(window(), query)];
      const both = async () =>
        (await Promise.all(screens.map((screen) => screen.next()))).map(
          ({ value }: any) => value.data.timerChanged.runningTimers,
        );
      expect(await both()).toEqual([[], []]);
      const { startTimer } = await ask(
        `mutation ($input: StartTimerInput!) { startTimer(input: $input) { session { id } problems { message } } }`,
        { input: { personId: person, itemId: rig, startedAt: '2026-06-01T11:00:00Z' } },
      );
      expect(startTimer.problems).toEqual([]);
      const running = { id: startTimer.session.id, item: { id: rig }, breaks: [] };
      expect(await both()).toEqual([[running], [running]]);
      await ask(
        `mutation ($input: TimerInput!) { takeBreak(input: $input) { problems { message } } }`,
        { input: { personId: person } },
      );
      const paused = { ...running, breaks: [{ endedAt: null }] };
      expect(await both()).toEqual([[paused], [paused]]);
      await ask(
        `mutation ($input: StopTimerInput!) { stopTimer(input: $input) { problems { message } } }`,
        { input: { personId: person } },
      );
      expect(await both()).toEqual([[], []]);
    });
  },
);

describe('a socket', () => {
  let api: HttpApi;
  let url: string;
  beforeAll(async () => {
    api = await httpApi();
    url = api.url.replace('http:', 'ws:');
  });
  afterAll(() => api.close());

  const errorsOf = async (query: string, variables?: Record<string, unknown>) => {
    const client = socketClient(url);
    try {
      const { value } = await followed(client, query, variables).next();
      return value.errors ?? value;
    } catch (errors) {
      return errors as any[];
    } finally {
      await client.dispose();
    }
  };
  const code = async (query: string, variables?: Record<string, unknown>) =>
    (await errorsOf(query, variables))[0].extensions.code;

  it('is opened for this server’s own pages and for programs, not for a page elsewhere', async () => {
    const { host } = new URL(url);
    expect(await refusedStatus(url, { host: 'elsewhere.example' })).toBe(421);
    expect(await refusedStatus(url, { origin: 'http://elsewhere.example' })).toBe(403);
    expect(await refusedStatus(url, { origin: 'null' })).toBe(403);
    expect(await refusedStatus(url.replace('/graphql', '/other'), {})).toBe(404);
    const own = await bareSocket(url, { origin: `http://${host}` });
    own.close();
    expect(await closeCode(own)).toBe(1005);
  });

  it('answers subscriptions only', async () => {
    expect(await code('{ feedCursor }')).toBe('BAD_REQUEST');
    expect(
      await code('mutation { createPlace(input: { name: "By socket" }) { place { id } } }'),
    ).toBe('BAD_REQUEST');
  });

  it('bounds depth, tokens, fragments and price as HTTP does', async () => {
    const deep = 'item { projects { item { '.repeat(8) + 'id' + ' } } }'.repeat(8);
    const [tooDeep] = await errorsOf(`subscription { timerChanged { runningTimers { ${deep} } } }`);
    expect(tooDeep.message).toContain('levels deep');
    const manyTokens = `subscription { timerChanged { ${'__typename '.repeat(4100)} } }`;
    expect(await code(manyTokens)).toBe('GRAPHQL_PARSE_FAILED');
    const [tooDear] = await errorsOf(
      `subscription { timerChanged { runningTimers { item { sessions(first: 100) { nodes { item { sessions(first: 100) { nodes { id note } } } } } } } } }`,
    );
    expect(tooDear.extensions.code).toBe('QUERY_TOO_COSTLY');
    const chain = Array.from(
      { length: 14 },
      (_, step) =>
        `fragment F${step} on Item { ${Array.from({ length: 3 }, (_, twin) => `a${twin}: projects { item { ...F${step + 1} } }`).join(' ')} }`,
    ).join(' ');
    const [tooMany] = await errorsOf(
      `subscription { timerChanged { runningTimers { item { ...F0 } } } } ${chain} fragment F14 on Item { id }`,
    );
    expect(tooMany.message).toMatch(/names more than|levels deep/);
  });

  it('says what is wrong with a query or its variables, and nothing of its insides', async () => {
    expect(await code('subscription { nothingOfTheSort }')).toBe('GRAPHQL_VALIDATION_FAILED');
    expect(await code('subscription {')).toBe('GRAPHQL_PARSE_FAILED');
    expect(await code(changes, { after: 5 })).toBe('BAD_USER_INPUT');
    expect(await code(changes, { after: 'no cursor' })).toBe('BAD_USER_INPUT');
    expect(await code(changes, { after: Buffer.from('["x","y"]').toString('base64url') })).toBe(
      'BAD_USER_INPUT',
    );
    expect(api.logged).toEqual([]);
  });

  it('is closed when a message is larger than any query', async () => {
    const socket = await bareSocket(url);
    socket.send('x'.repeat(70 * 1024));
    expect(await closeCode(socket)).toBe(1009);
  });

  it('follows twenty things and no more', async () => {
    const client = socketClient(url);
    const all = Array.from({ length: 21 }, () =>
      followed(client, `subscription { timerChanged { runningTimers { id } } }`),
    );
    const answers = await Promise.allSettled(all.map((one) => one.next()));
    expect(answers.filter(({ status }) => status === 'rejected')).toHaveLength(1);
    await client.dispose();
  });
});
