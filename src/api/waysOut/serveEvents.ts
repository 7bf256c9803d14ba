import { Router } from 'express';
import { argumentProblem } from '../kit/argumentProblem.js';
import { readEventCursor } from '../../features/events/eventCursor.js';
import { jsonFeed } from '../../features/events/jsonFeed.js';
import type { ApiContext } from '../kit/apiContext.js';
import { addressOf } from './addressOf.js';
import { admitted } from './admitted.js';

const path = '/feeds/events.json';
const usualSize = 50;
const largestSize = 100;

/** `/feeds/events.json?size=50&before=…`: what happened, as JSON Feed. */
export function serveEvents(contextNow: () => ApiContext): Router {
  const router = Router();
  const door = { scope: 'EVENTS', mayBeInAddress: true, contextNow } as const;
  router.get(
    path,
    admitted(door, async (request, response, { shows }, { database, nowMs }) => {
      const { before, size, access_token: token } = request.query;
      const address = addressOf(request);
      const pageSize = readSize(size);
      const feed = await jsonFeed(database.reader, {
        address,
        feedUrl: `${address}${path}`,
        before: before === undefined ? null : readEventCursor(textOf(before)),
        size: pageSize,
        shows,
        nowMs,
        // Who sent the token in the address cannot send it otherwise on the next page.
        nextUrl: (cursor) => {
          const query = new URLSearchParams({ size: String(pageSize), before: cursor });
          if (typeof token === 'string') query.set('access_token', token);
          return `${address}${path}?${query.toString()}`;
        },
      });
      response.set('Content-Type', 'application/feed+json').end(JSON.stringify(feed));
    }),
  );
  return router;
}

const textOf = (value: unknown): string => (typeof value === 'string' ? value : '');

function readSize(value: unknown): number {
  if (value === undefined) return usualSize;
  const size = /^\d{1,3}$/.test(textOf(value)) ? Number(value) : 0;
  if (size >= 1 && size <= largestSize) return size;
  throw argumentProblem(`“size” is a number from 1 to ${largestSize}.`);
}
