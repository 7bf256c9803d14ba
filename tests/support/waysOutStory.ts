import { request } from 'node:http';
import type { Engine } from '../../src/db/dialect.js';
import { loadDemo } from '../../src/features/demo/loadDemo.js';
import { seedFolder } from '../../src/features/hazards/seedFolder.js';
import { httpApi, type HttpApi } from './httpApi.js';

export interface WaysOutStory {
  api: HttpApi;
  /** `http://127.0.0.1:…` */
  base: string;
  ask(query: string, variables?: object): Promise<any>;
  /** @returns the token itself and its id. */
  make(scopes: string[], shows?: string[]): Promise<{ token: string; id: string; version: number }>;
  /** Asks a way out with a token in the header. */
  get(path: string, token: string | null, headers?: Record<string, string>): Promise<Response>;
}

/** Every way out by an address that answers, with the scope that opens it. */
export const everyWay = [
  ['FIGURES', '/metrics'],
  ['EVENTS', '/feeds/events.json'],
  ['CALENDAR', '/calendars/due.ics'],
  ['CALENDAR', '/calendars/sessions.ics'],
  ['DOCUMENTS', '/documents/collection-figures'],
] as const;

/** The demo collection over HTTP, on 2026-06-01. */
export async function waysOutStory(engine: Engine): Promise<WaysOutStory> {
  const api = await httpApi(engine);
  await loadDemo(api.database, seedFolder('demo'), new Date('2026-06-01T12:00:00Z'));
  const base = api.url.replace('/graphql', '');
  const ask: WaysOutStory['ask'] = async (query, variables = {}) => {
    const { data, errors } = (await (await api.post({ query, variables })).json()) as any;
    if (errors) throw new Error(JSON.stringify(errors));
    return data;
  };
  return {
    api,
    base,
    ask,
    make: async (scopes, shows = []) => {
      const { makeReadToken } = await ask(
        `mutation ($input: MakeReadTokenInput!) { makeReadToken(input: $input) {
          token readToken { id version } problems { message } } }`,
        { input: { name: `for ${scopes.join()}`, scopes, shows } },
      );
      return { token: makeReadToken.token, ...makeReadToken.readToken };
    },
    get: (path, token, headers = {}) =>
      fetch(`${base}${path}`, {
        headers: { ...(token !== null && { authorization: `Bearer ${token}` }), ...headers },
      }),
  };
}

/** The status of a request that names another host, as a page elsewhere could make it. */
export const statusUnderHost = (url: string, host: string, token: string): Promise<number> =>
  new Promise((resolve, reject) => {
    const headers = { host, authorization: `Bearer ${token}` };
    request(url, { headers }, (response) => {
      response.resume();
      resolve(response.statusCode ?? 0);
    })
      .on('error', reject)
      .end();
  });

export interface Feed {
  next_url?: string;
  items: { id: string; title: string; content_text: string; date_published: string; url: string }[];
}

/** Every event on every page, by following next_url as a reader does. */
export async function wholeFeed(start: string): Promise<Feed['items']> {
  const items: Feed['items'] = [];
  const seen = new Set<string>();
  for (let url: string | undefined = start; url !== undefined;) {
    if (seen.has(url)) throw new Error(`the feed goes round in circles at ${url}`);
    seen.add(url);
    const response = await fetch(url);
    if (!response.ok) throw new Error(`${url}: ${response.status} ${await response.text()}`);
    const feed = (await response.json()) as Feed;
    items.push(...feed.items);
    url = feed.next_url;
  }
  return items;
}
