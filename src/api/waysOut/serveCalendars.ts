import { Router, type Response } from 'express';
import { dueForToken, sessionsForToken } from '../../features/calendars/tokenCalendars.js';
import type { ApiContext } from '../kit/apiContext.js';
import { admitted } from './admitted.js';

/** `/calendars/due.ics` and `/calendars/sessions.ics?from=2026-01-01&to=2026-12-31`. */
export function serveCalendars(contextNow: () => ApiContext): Router {
  const router = Router();
  const door = { scope: 'CALENDAR', mayBeInAddress: true, contextNow } as const;
  router.get(
    '/calendars/due.ics',
    admitted(door, async (_request, response, { shows }, context) => {
      send(response, await dueForToken(context, shows));
    }),
  );
  router.get(
    '/calendars/sessions.ics',
    admitted(door, async ({ query }, response, { shows }, context) => {
      const days = { from: textOrNull(query['from']), to: textOrNull(query['to']) };
      send(response, await sessionsForToken(context, shows, days));
    }),
  );
  return router;
}

const send = (response: Response, text: string): void => {
  response.set('Content-Type', 'text/calendar; charset=utf-8').end(text);
};

const textOrNull = (value: unknown): string | null => (typeof value === 'string' ? value : null);
