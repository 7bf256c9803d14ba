import { createHash } from 'node:crypto';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { makeReadToken } from '../../src/features/readTokens/makeReadToken.js';
import { recordEntities } from '../../src/features/entities.js';
import {
  everyWay,
  statusUnderHost,
  waysOutStory,
  type WaysOutStory,
} from '../support/waysOutStory.js';

describe.each(['sqlite', 'postgres'] as const)('a token that opens ways out, on %s', (engine) => {
  let story: WaysOutStory;
  beforeAll(async () => {
    story = await waysOutStory(engine);
  }, 240_000);
  afterAll(() => story.api.close());

  const rows = (sql: string) => story.api.database.reader.rows<Record<string, unknown>>(sql);
  const challenged = (response: Response) => response.headers.get('www-authenticate') ?? '';

  it.each(everyWay)('of scope %s is wanted at %s, even on the loopback', async (scope, path) => {
    const response = await story.get(path, null, { origin: 'http://elsewhere.example' });
    expect(response.status).toBe(401);
    // RFC 6750, section 3.1: no error code where nothing was sent.
    expect(challenged(response)).toBe(`Bearer realm="Reglow", scope="${scope}"`);
    expect(response.headers.get('cache-control')).toBe('private, no-store');
    expect(response.headers.get('access-control-allow-origin')).toBeNull();
    expect(await response.text()).toContain('A token is wanted here');
  });

  it.each(everyWay)('of scope %s opens %s and nothing else', async (scope, path) => {
    const { token } = await story.make([scope]);
    const response = await story.get(path, token, { origin: 'http://elsewhere.example' });
    expect(response.status).toBe(200);
    expect(response.headers.get('cache-control')).toBe('private, no-store');
    expect(response.headers.get('vary')).toContain('Authorization');
    expect(response.headers.get('access-control-allow-origin')).toBeNull();
    for (const [other, elsewhere] of everyWay) {
      if (other === scope) continue;
      const refused = await story.get(elsewhere, token);
      expect(refused.status).toBe(403);
      expect(challenged(refused)).toContain('error="insufficient_scope"');
      expect(await refused.text()).toContain(`this way out wants ${other}`);
    }
  });

  it('is refused when it is not known, not whole, or no token at all', async () => {
    const { token } = await story.make(['FIGURES']);
    const other = token.endsWith('A') ? 'B' : 'A';
    const wrong = [token.slice(0, -1), `${token.slice(0, -1)}${other}`, 'reglow', "x' OR 1=1 --"];
    for (const text of [...wrong, token.replace(/_[0-9a-f]{12}_/, '_000000000000_')]) {
      const response = await story.get('/metrics', text);
      expect(response.status, text).toBe(401);
      expect(await response.text()).toContain(text.includes(' ') ? 'token' : 'No such token');
    }
    expect((await story.get('/metrics', token)).status).toBe(200);
  });

  it('opens nothing once it is taken back, and says since when', async () => {
    const { token, id, version } = await story.make(['FIGURES']);
    const takeBack = (input: object) =>
      story.ask(
        `mutation ($input: TakeBackReadTokenInput!) { takeBackReadToken(input: $input) {
          readToken { takenBackAt } problems { code message } } }`,
        { input },
      );
    const stale = await takeBack({ tokenId: id, version: version + 1 });
    expect(stale.takeBackReadToken.problems[0].code).toBe('OUT_OF_DATE');
    expect((await story.get('/metrics', token)).status).toBe(200);
    const { takeBackReadToken } = await takeBack({ tokenId: id, version });
    expect(takeBackReadToken).toMatchObject({
      readToken: { takenBackAt: '2026-06-01T12:00:00.000Z' },
      problems: [],
    });
    const response = await story.get('/metrics', token);
    expect(response.status).toBe(401);
    expect(challenged(response)).toContain('error="invalid_token"');
    expect(await response.text()).toContain('taken back on 2026-06-01');
    const again = await takeBack({ tokenId: id, version: version + 1 });
    expect(again.takeBackReadToken.problems[0].message).toContain('already');
  });

  it('opens nothing after its last day', async () => {
    const at = (day: string, lastDay: string) =>
      story.api.database.write(
        { action: 'makeReadToken', actorId: null, now: `${day}T08:00:00.000Z` },
        (work) => makeReadToken(work, { name: 'short', scopes: ['FIGURES'], lastDay }),
      );
    const lapsed = await at('2026-05-01', '2026-05-31');
    const response = await story.get('/metrics', lapsed.text);
    expect(response.status).toBe(401);
    expect(await response.text()).toContain('last day of this token was 2026-05-31');
    const today = await at('2026-05-01', '2026-06-01');
    expect((await story.get('/metrics', today.text)).status).toBe(200);
  });

  it('says everything that is wrong with what it is made of', async () => {
    const { makeReadToken: made } = await story.ask(
      `mutation { makeReadToken(input: { name: " ", scopes: [], lastDay: "2026-05-31" }) {
        token readToken { id } problems { path } } }`,
    );
    expect(made).toMatchObject({ token: null, readToken: null });
    expect(made.problems.map(({ path }: { path: string[] }) => path[0])).toEqual([
      'name',
      'scopes',
      'lastDay',
    ]);
  });

  it('may stand in the address of a feed or calendar, and nowhere else', async () => {
    const { token } = await story.make(['FIGURES', 'EVENTS', 'CALENDAR', 'DOCUMENTS']);
    for (const [scope, path] of everyWay) {
      const isForReaders = scope === 'EVENTS' || scope === 'CALENDAR';
      const response = await story.get(`${path}?access_token=${token}`, null);
      expect(response.status, path).toBe(isForReaders ? 200 : 400);
      // RFC 6750, section 2: no more than one method in a request.
      expect((await story.get(`${path}?access_token=${token}`, token)).status).toBe(400);
    }
    const twice = `/feeds/events.json?access_token=${token}&access_token=${token}`;
    expect((await story.get(twice, null)).status).toBe(400);
  });

  it('is kept as a digest alone, which no log, archive or answer holds', async () => {
    const { token, id } = await story.make(['FIGURES']);
    const digest = createHash('sha256').update(token).digest('hex');
    const proofs = await rows('SELECT digest AS "digest" FROM read_token_proof');
    expect(proofs.map((proof) => proof['digest'])).toContain(digest);
    const log = JSON.stringify(await rows(`SELECT * FROM change WHERE record_table LIKE 'read_%'`));
    expect(log).toContain(id.replace('ReadToken_', ''));
    const secret = token.slice(-43);
    for (const hidden of [digest, secret, token]) expect(log).not.toContain(hidden);
    const events = JSON.stringify(await rows('SELECT * FROM change_event'));
    expect(events).not.toContain(digest);
    const tables = recordEntities.map(
      (entity) => story.api.database.dataSource.getMetadata(entity).tableName,
    );
    expect(tables).not.toContain('read_token');
    expect(tables).not.toContain('read_token_proof');
    const { readTokens } = await story.ask(
      '{ readTokens(first: 1) { totalCount nodes { id name scopes shows lastDay madeAt } } }',
    );
    expect(readTokens.nodes[0]).toMatchObject({
      id,
      scopes: ['FIGURES'],
      shows: [],
      lastDay: null,
    });
  });

  it('notes the day of its use, without a place in the history', async () => {
    const { token, id } = await story.make(['FIGURES']);
    const lastUsedOn = async () =>
      (await story.ask(`{ node(id: "${id}") { ... on ReadToken { lastUsedOn } } }`)).node
        .lastUsedOn;
    expect(await lastUsedOn()).toBeNull();
    const sql = 'SELECT MAX(sequence) AS "last" FROM change';
    const before = await rows(sql);
    await Promise.all(Array.from({ length: 8 }, () => story.get('/metrics', token)));
    expect(await lastUsedOn()).toBe('2026-06-01');
    expect(await rows(sql)).toEqual(before);
  });

  it('does not help a page elsewhere that gives this machine a name of its own', async () => {
    const { token } = await story.make(['FIGURES', 'EVENTS', 'CALENDAR', 'DOCUMENTS']);
    for (const [, path] of everyWay) {
      const url = `${story.base}${path}`;
      expect(await statusUnderHost(url, 'elsewhere.example', token)).not.toBe(200);
      expect(await statusUnderHost(url, 'localhost', token)).toBe(200);
    }
  });

  it('only reads, and nothing of it is written down when something fails', async () => {
    const { token } = await story.make(['FIGURES', 'EVENTS', 'CALENDAR', 'DOCUMENTS']);
    const send = (method: string, path: string) =>
      fetch(`${story.base}${path}`, { method, headers: { authorization: `Bearer ${token}` } });
    expect((await send('POST', '/metrics')).status).toBe(405);
    expect((await send('DELETE', '/documents/rigs')).status).toBe(405);
    expect((await send('OPTIONS', '/feeds/events.json')).headers.get('allow')).not.toContain(
      'POST',
    );
    expect((await send('GET', '/calendars/other.ics')).status).toBe(404);
    const bad = [
      `/feeds/events.json?size=0&access_token=${token}`,
      `/feeds/events.json?before=x&access_token=${token}`,
      `/calendars/sessions.ics?from=May&access_token=${token}`,
      `/calendars/sessions.ics?to=May&access_token=${token}`,
    ];
    for (const path of bad) {
      const response = await story.get(path, null);
      expect(response.status, path).toBe(400);
      expect(await response.text()).not.toContain(token);
    }
    await story.get(`/documents/%E0%A4%A`, token);
    const { database } = story.api;
    const read = database.reader.rows;
    database.reader.rows = () => Promise.reject(new Error('the database is away'));
    const failed = await story.get(`/feeds/events.json?access_token=${token}`, null);
    database.reader.rows = read;
    expect(failed.status).toBe(500);
    expect(await failed.text()).not.toContain(token);
    const logged = story.api.logged.map(
      ({ error }) => `${String(error)} ${(error as Error).stack ?? ''}`,
    );
    expect(logged.join()).toContain('the database is away');
    expect(logged.join()).not.toContain(token);
    expect(JSON.stringify(story.api.logged)).not.toContain(token);
  });
});
