import { execFile } from 'node:child_process';
import { promisify } from 'node:util';
import ICAL from 'ical.js';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import type { eventKinds } from '../../src/features/events/eventKind.js';
import { tokenVariable } from '../../src/features/waysOut/waysOut.js';
import { readOpenMetrics } from '../support/openMetricsGrammar.js';
import {
  everyWay,
  waysOutStory,
  wholeFeed,
  type Feed,
  type WaysOutStory,
} from '../support/waysOutStory.js';

const run = promisify(execFile);
const everything = ['MONEY', 'PEOPLE', 'PLACES'];

describe.each(['sqlite', 'postgres'] as const)('the ways out, on %s', (engine) => {
  let story: WaysOutStory;
  beforeAll(async () => {
    story = await waysOutStory(engine);
  }, 240_000);
  afterAll(() => story.api.close());

  const count = async (from: string): Promise<number> => {
    const [row] = await story.api.database.reader.rows<{ n: number }>(
      `SELECT COUNT(*) AS "n" FROM ${from}`,
    );
    return Number(row?.n);
  };

  it('print examples that answer as they say, each with a token for it alone', async () => {
    const { waysOut } = await story.ask(
      `query ($address: String!) { waysOut(address: $address) { ways { scope path mediaType
         examples { kind command subscribeTo } } } }`,
      { address: story.base },
    );
    const answers: Record<string, string> = {};
    for (const { scope, examples } of waysOut.ways) {
      const { token } = await story.make([scope]);
      for (const { kind, command, subscribeTo } of examples) {
        expect(command.includes('access_token')).toBe(subscribeTo !== null);
        const env = { ...process.env, [tokenVariable]: token };
        const { stdout } = await run('bash', ['-c', `${command} --fail-with-body`], { env });
        answers[kind] = stdout;
      }
    }
    const json = (kind: string) => JSON.parse(answers[kind] ?? '');
    expect(readOpenMetrics(answers['FIGURES'] ?? '').size).toBeGreaterThan(8);
    expect(json('EVENTS').items).toHaveLength(10);
    expect(json('EVENTS_IN_ADDRESS').version).toBe('https://jsonfeed.org/version/1.1');
    for (const kind of ['DUE', 'SESSIONS']) {
      const calendar = new ICAL.Component(ICAL.parse(answers[kind] ?? ''));
      expect(calendar.getAllSubcomponents('vevent').length).toBeGreaterThan(0);
    }
    expect(json('DOCUMENT_BY_NAME').data.shack.readyAlone).toBeGreaterThan(0);
    expect(json('DOCUMENT_BY_DIGEST').data.collection.hours.hours).toBeGreaterThan(0);
    expect(json('DOCUMENT_WITH_VARIABLES').data.rigs.nodes).toHaveLength(3);
  });

  it('print no address into a shell that is more than an address', async () => {
    for (const address of [
      'http://a$(id)',
      "http://a'",
      'http://a/b',
      'javascript:x',
      'http://a b',
    ]) {
      await expect(
        story.ask('query ($address: String!) { waysOut(address: $address) { ways { path } } }', {
          address,
        }),
      ).rejects.toThrow('http://localhost:4600');
    }
  });

  it('keep people, places, serial numbers and money to the house unless told otherwise', async () => {
    const { parties, places, rigs, models } = await story.ask(
      `{ parties(first: 100) { nodes { name } } places(first: 100) { nodes { name } }
         models(first: 100) { nodes { maker } }
         rigs(first: 100) { nodes { serialNumber } } }`,
    );
    const makers = new Set(models.nodes.map(({ maker }: { maker: string }) => maker));
    const names = [...parties.nodes, ...places.nodes]
      .map(({ name }: { name: string }) => name)
      .filter((name: string) => !makers.has(name));
    const numbers = rigs.nodes
      .map(({ serialNumber }: { serialNumber: string | null }) => serialNumber)
      .filter((number: string | null) => number !== null && number.length > 4);
    expect(names.length).toBeGreaterThan(5);
    expect(numbers.length).toBeGreaterThan(0);
    const { token } = await story.make(['FIGURES', 'EVENTS', 'CALENDAR', 'DOCUMENTS']);
    const answers = [
      JSON.stringify(await wholeFeed(`${story.base}/feeds/events.json?access_token=${token}`)),
    ];
    const documents = ['rigs', 'ready-rigs', 'what-is-due'].map((name) => `/documents/${name}`);
    for (const path of [...everyWay.map(([, way]) => way), ...documents]) {
      answers.push((await (await story.get(path, token)).text()).replaceAll('\r\n ', ''));
    }
    for (const answer of answers) {
      for (const word of [...names, ...numbers]) {
        expect(
          new RegExp(`(?<![\\p{L}\\p{N}])${word}(?![\\p{L}\\p{N}])`, 'u').test(answer),
          word,
        ).toBe(false);
      }
      expect(answer).not.toMatch(/\d (EUR|USD|GBP)\b|reglow_spent/);
    }
  });

  it('show what the token may show', async () => {
    const plain = await story.make(['DOCUMENTS', 'FIGURES', 'EVENTS', 'CALENDAR']);
    const full = await story.make(['DOCUMENTS', 'FIGURES', 'EVENTS', 'CALENDAR'], everything);
    const needing = {
      'money-spent': 'MONEY',
      'who-has-what': 'PEOPLE',
      'where-things-stand': 'PLACES',
    };
    for (const [name, need] of Object.entries(needing)) {
      const refused = await story.get(`/documents/${name}`, plain.token);
      expect(refused.status).toBe(403);
      const { errors, data } = (await refused.json()) as any;
      expect(data).toBeUndefined();
      expect(errors[0].message).toContain(need);
      const others = await story.make(
        ['DOCUMENTS'],
        everything.filter((each) => each !== need),
      );
      expect((await story.get(`/documents/${name}`, others.token)).status).toBe(403);
      const shown = (await (await story.get(`/documents/${name}`, full.token)).json()) as any;
      expect(shown.errors).toBeUndefined();
      expect(JSON.stringify(shown.data)).not.toContain('[withheld]');
    }
    const spent = readOpenMetrics(await (await story.get('/metrics', full.token)).text());
    const { collection } = await story.ask(
      '{ collection { cost { byCurrency { currency price { amount } } } } }',
    );
    for (const { currency, price } of collection.cost.byCurrency) {
      const sample = spent
        .get('reglow_spent')
        ?.samples.find(
          ({ labels }) => labels['currency'] === currency && labels['what'] === 'price',
        );
      expect(sample?.value).toBe(Number(price.amount));
    }
    const feed = await wholeFeed(
      `${story.base}/feeds/events.json?access_token=${full.token}&size=100`,
    );
    const texts = feed.map(({ content_text }) => content_text).join('\n');
    for (const line of ['Person: ', 'Place: ', 'Price of the lot: ']) expect(texts).toContain(line);
    const sessions = await (await story.get('/calendars/sessions.ics', full.token)).text();
    expect(sessions).toMatch(/, by |\\, by /);
  });

  it('give the figures that the API gives', async () => {
    const { token } = await story.make(['FIGURES']);
    const response = await story.get('/metrics', token);
    expect(response.headers.get('content-type')).toBe(
      'application/openmetrics-text; version=1.0.0; charset=utf-8',
    );
    const families = readOpenMetrics(await response.text());
    const value = (name: string, labels: Record<string, string> = {}) =>
      families
        .get(name)
        ?.samples.find((sample) => JSON.stringify(sample.labels) === JSON.stringify(labels))?.value;
    const { collection, rigs, accessories } = await story.ask(
      `{ rigs { totalCount } accessories { totalCount } collection {
         hours { hours } completion { share } completeness { share }
         readiness { byLevel { level rigs } } } }`,
    );
    expect(value('reglow_items', { kind: 'rig' })).toBe(rigs.totalCount);
    expect(value('reglow_items', { kind: 'accessory' })).toBe(accessories.totalCount);
    expect(value('reglow_completion_ratio')).toBe(collection.completion.share);
    expect(value('reglow_completeness_ratio')).toBe(collection.completeness.share);
    for (const { level, rigs: standing } of collection.readiness.byLevel) {
      expect(value('reglow_rigs_by_readiness', { readiness: level.toLowerCase() })).toBe(standing);
    }
    const seconds = families.get('reglow_invested_seconds')?.samples ?? [];
    const hours = seconds.reduce((sum, sample) => sum + sample.value, 0) / 3600;
    expect(Math.abs(hours - collection.hours.hours)).toBeLessThan(0.01);
    expect(value('reglow_log_entries')).toBe(await count('change'));
    expect(value('reglow_open_hazards')).toBe(
      await count(
        `hazard WHERE cleared_at IS NULL
         AND item_id IN (SELECT id FROM item WHERE retired_at IS NULL)`,
      ),
    );
    expect([...families.values()].every(({ help }) => help !== null && help !== '')).toBe(true);
  });

  it('tell every event once, the latest first, under an identity that stays', async () => {
    const { token } = await story.make(['EVENTS']);
    const address = `${story.base}/feeds/events.json?access_token=${token}`;
    const first = await fetch(address);
    expect(first.headers.get('content-type')).toBe('application/feed+json');
    // JSON Feed 1.1, “Top-level” and “Items”: https://www.jsonfeed.org/version/1.1/
    const head = (await first.json()) as Record<string, unknown>;
    expect(head).toMatchObject({ feed_url: `${story.base}/feeds/events.json`, language: 'en' });
    expect(head['home_page_url']).toBe(`${story.base}/`);
    expect(head['next_url']).not.toBe(head['feed_url']);
    const items = await wholeFeed(`${address}&size=7`);
    expect(new Set(items.map(({ id }) => id)).size).toBe(items.length);
    const published = items.map(({ date_published: at }) => at);
    expect([...published].sort().reverse()).toEqual(published);
    expect(published.every((at) => !Number.isNaN(Date.parse(at)))).toBe(true);
    expect(items.every(({ url }) => url.startsWith(`${story.base}/sets/`))).toBe(true);
    const ofKind = (kind: keyof typeof eventKinds) =>
      items.filter(({ id }) => id.endsWith(`#${kind.toLowerCase().replaceAll('_', '-')}`)).length;
    const counted = {
      SESSION_FINISHED: 'work_session WHERE ended_at IS NOT NULL',
      PART_FITTED: 'fitting',
      PART_REMOVED: 'fitting WHERE removed_at IS NOT NULL',
      SET_ACQUIRED: 'lot_line WHERE item_id IS NOT NULL',
      HAZARD_RAISED: 'hazard',
      HAZARD_CLEARED: 'hazard WHERE cleared_at IS NOT NULL',
      LENT: 'loan',
      MAINTENANCE_DONE: 'maintenance_done WHERE withdrawn_at IS NULL',
    } as const;
    for (const [kind, from] of Object.entries(counted)) {
      const there = await count(from);
      expect(ofKind(kind as keyof typeof counted), kind).toBe(there);
    }
    expect(await wholeFeed(`${address}&size=100`)).toEqual(items);
    const proxied = await story.get('/feeds/events.json', token, { 'x-forwarded-proto': 'https' });
    expect(((await proxied.json()) as Feed).next_url).toMatch(/^https:(?!.*access_token)/);
  });

  it('run published documents as GraphQL over HTTP asks', async () => {
    const { token } = await story.make(['DOCUMENTS']);
    const post = (body: unknown, headers: Record<string, string> = {}) =>
      fetch(`${story.base}/documents`, {
        method: 'POST',
        headers: {
          authorization: `Bearer ${token}`,
          'content-type': 'application/json',
          ...headers,
        },
        body: typeof body === 'string' ? body : JSON.stringify(body),
      });
    const { waysOut } = await story.ask('{ waysOut { documents { name documentId needs } } }');
    for (const { name, documentId, needs } of waysOut.documents) {
      if (needs.length > 0) continue;
      const byName = await (await story.get(`/documents/${name}`, token)).json();
      expect(byName).not.toHaveProperty('errors');
      expect(await (await post({ documentId })).json()).toEqual(byName);
      const path = `/documents?documentId=${documentId}&variables=${encodeURIComponent('{}')}`;
      expect(await (await story.get(path, token)).json()).toEqual(byName);
    }
    const newType = { accept: 'application/graphql-response+json' };
    const answered = await post({ documentId: 'rigs', variables: { first: 2 } }, newType);
    expect(answered.headers.get('content-type')).toContain(newType.accept);
    const wrong = await post({ documentId: 'rigs', variables: { first: 'many' } }, newType);
    expect(wrong.status).toBe(400);
    // “If the server fails to retrieve the document, it MUST respond with a well-formed GraphQL
    // response consisting of a single error.”
    for (const documentId of [`sha256:${'0'.repeat(64)}`, 'nothing', 'constructor']) {
      const unknown = await post({ documentId });
      expect(unknown.status).toBe(404);
      const { errors, ...rest } = (await unknown.json()) as any;
      expect(rest).toEqual({});
      expect(errors).toHaveLength(1);
    }
    const refused = [
      {},
      [],
      { query: '{ parties { nodes { name } } }' },
      { documentId: 'rigs', query: '{ parties { nodes { name } } }' },
      { documentId: 7 },
      { documentId: 'rigs', variables: [] },
      { documentId: 'rigs', operationName: {} },
    ];
    for (const body of refused) expect((await post(body)).status, JSON.stringify(body)).toBe(400);
    expect((await post('{"documentId":')).status).toBe(400);
    expect((await post('documentId=rigs', { 'content-type': 'text/plain' })).status).toBe(415);
    expect((await story.get('/documents/rigs?variables={', token)).status).toBe(400);
    expect((await story.get('/documents/rigs?documentId=ready-rigs', token)).status).toBe(400);
    expect((await story.get('/documents', token)).status).toBe(400);
    expect(story.api.logged).toEqual([]);
  });

  it('show in a calendar what falls due, loans too, under identities that stay', async () => {
    const { token } = await story.make(['CALENDAR']);
    const { rigs, parties } = await story.ask(
      '{ rigs(first: 30) { nodes { id } } parties(first: 1) { nodes { id } } }',
    );
    let lent = null;
    for (const { id } of rigs.nodes) {
      const { lendItem } = await story.ask(
        `mutation ($input: LendItemInput!) { lendItem(input: $input) {
           loan { id } problems { message } } }`,
        {
          input: {
            itemId: id,
            borrower: { id: parties.nodes[0].id },
            lentOn: '2026-05-30',
            dueOn: '2026-07-04',
          },
        },
      );
      lent = lendItem.loan;
      if (lent) break;
    }
    const text = await (await story.get('/calendars/due.ics', token)).text();
    const events = new ICAL.Component(ICAL.parse(text)).getAllSubcomponents('vevent');
    const uid = `${String(lent?.id).replace('Loan_', '')}@reglow`;
    const loan = events.find((event) => event.getFirstPropertyValue('uid') === uid);
    expect(String(loan?.getFirstPropertyValue('dtstart'))).toBe('2026-07-04');
    expect(String(loan?.getFirstPropertyValue('summary'))).toContain('is due back');
    expect(loan?.getFirstPropertyValue('description')).toBeNull();
    const again = await (await story.get('/calendars/due.ics', token)).text();
    expect(again.match(/^UID:.*$/gm)).toEqual(text.match(/^UID:.*$/gm));
  });
});
