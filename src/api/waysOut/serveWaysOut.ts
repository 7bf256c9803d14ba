import { Router, type ErrorRequestHandler, type RequestHandler } from 'express';
import { GraphQLError } from 'graphql';
import { serveCalendars } from './serveCalendars.js';
import { serveDocuments } from './serveDocuments.js';
import { serveEvents } from './serveEvents.js';
import { serveFigures } from './serveFigures.js';

const paths = [
  '/metrics',
  '/feeds/events.json',
  '/calendars/:name',
  '/documents',
  '/documents/:name',
];

/** Every way out for other programs, each behind a token of its own scope. */
export function serveWaysOut(serving: Parameters<typeof serveDocuments>[0]): Router {
  const { contextNow } = serving;
  const router = Router();
  router.use(
    serveFigures(contextNow),
    serveEvents(contextNow),
    serveCalendars(contextNow),
    serveDocuments(serving),
  );
  // Nothing of these addresses is left for the pages to answer.
  router.all(paths, nothingHere);
  router.use(sayWhatToMend);
  return router;
}

const nothingHere: RequestHandler = ({ method, path }, response) => {
  const isRead = method === 'GET' || method === 'HEAD';
  response.status(isRead ? 404 : 405).set('Cache-Control', 'private, no-store');
  if (!isRead)
    response.set('Allow', path.startsWith('/documents') ? 'GET, HEAD, POST' : 'GET, HEAD');
  response.type('text/plain').send(isRead ? 'There is no such way out.\n' : 'Only reading here.\n');
};

/** What the asker can mend is answered; everything else goes on as a failure. */
const sayWhatToMend: ErrorRequestHandler = (error: unknown, _request, response, next) => {
  if (!(error instanceof GraphQLError)) {
    next(error);
    return;
  }
  response.status(400).type('text/plain').send(`${error.message}\n`);
};
