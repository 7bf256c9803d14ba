import type { Reader } from '../../db/reader.js';
import { hidingFor } from '../readTokens/hidingFor.js';
import type { TokenAllowance } from '../readTokens/tokenAllowance.js';
import { eventCursor, type EventPlace } from './eventCursor.js';
import { eventKinds } from './eventKind.js';
import type { EventRow } from './eventSource.js';
import { readEvents } from './readEvents.js';
import { readSessionHours } from './sessionHours.reads.js';
import { tellEvent, type EventTelling } from './tellEvent.js';

export interface FeedAsked {
  /** `http://localhost:4600` */
  address: string;
  /** Of the feed, without what proves the reader. */
  feedUrl: string;
  before: EventPlace | null;
  size: number;
  /** The address of the page after this one. */
  nextUrl: (cursor: string) => string;
  shows: ReadonlySet<TokenAllowance>;
  nowMs: number;
}

/** What happened, the latest first, as a JSON Feed 1.1 (https://www.jsonfeed.org/version/1.1/). */
export async function jsonFeed(reader: Reader, asked: FeedAsked): Promise<object> {
  const { address, feedUrl, before, size, shows, nowMs, nextUrl } = asked;
  const { events, hasMore } = await readEvents(reader, before, size);
  const hiding = await hidingFor(reader, shows);
  const sessions = events.filter(({ kind }) => kind === 'SESSION_FINISHED').map(({ id }) => id);
  const telling = { shows, hiding, hours: await readSessionHours(reader, sessions, nowMs) };
  const [collection] = await reader.rows<{ name: string }>(
    'SELECT name AS "name" FROM collection LIMIT 1',
  );
  const last = events.at(-1);
  return {
    version: 'https://jsonfeed.org/version/1.1',
    title: hiding(`${collection?.name ?? 'My collection'}: what happened`),
    home_page_url: `${address}/`,
    feed_url: feedUrl,
    ...(hasMore && last && { next_url: nextUrl(eventCursor(last)) }),
    language: 'en',
    items: events.map((event) => feedItem(event, telling, address)),
  };
}

function feedItem(event: EventRow, telling: EventTelling, address: string): object {
  const { id, kind, at, isDay, inventoryNumber } = event;
  const { title, text } = tellEvent(event, telling);
  return {
    // The record and what it tells: the same for ever, whatever is corrected in it.
    id: `urn:uuid:${id}#${kind.toLowerCase().replaceAll('_', '-')}`,
    url: `${address}/sets/${encodeURIComponent(inventoryNumber)}`,
    title,
    content_text: text,
    date_published: at,
    tags: [eventKinds[kind]],
    _reglow: { kind, inventory_number: inventoryNumber, is_whole_day: isDay },
  };
}
