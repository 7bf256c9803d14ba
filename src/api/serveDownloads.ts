import { Router, type Request, type Response } from 'express';
import { GraphQLError } from 'graphql';
import { itemIdByNumber } from '../features/reports/itemIdByNumber.js';
import {
  hoursText,
  maintenanceText,
  progressText,
  sessionsText,
  type ReportScope,
} from '../features/reports/reportTexts.js';
import type { ApiContext } from './kit/apiContext.js';

interface Download {
  type: string;
  text: (context: ApiContext, request: Request) => Promise<string>;
}

const inDays =
  (write: (context: ApiContext, scope: ReportScope) => Promise<string>): Download['text'] =>
  async (context, { query }) =>
    write(context, {
      from: oneValue(query['from']) ?? '',
      to: oneValue(query['to']) ?? '',
      itemId: await itemIdByNumber(context.database.reader, oneValue(query['item'])),
    });

const downloads: Record<string, Download> = {
  'hours.csv': { type: 'text/csv; charset=utf-8; header=present', text: inDays(hoursText) },
  'sessions.ics': { type: 'text/calendar; charset=utf-8', text: inDays(sessionsText) },
  'maintenance.ics': { type: 'text/calendar; charset=utf-8', text: maintenanceText },
  'progress.md': {
    type: 'text/markdown; charset=utf-8',
    text: inDays((context, scope) => progressText(context, scope, 'MARKDOWN')),
  },
  'progress.html': {
    type: 'text/html; charset=utf-8',
    text: inDays((context, scope) => progressText(context, scope, 'HTML')),
  },
};

/** The reports as plain files: `/download/hours.csv?from=2026-05-01&to=2026-05-31&item=R-001`. */
export function serveDownloads(contextNow: () => ApiContext): Router {
  const router = Router();
  for (const [name, { type, text }] of Object.entries(downloads)) {
    router.get(`/${name}`, async (request, response) => {
      const answer = await text(contextNow(), request).catch(problemOf);
      if (answer instanceof GraphQLError) refuse(response, answer);
      else {
        response.setHeader('content-type', type);
        response.setHeader('content-disposition', `attachment; filename="${name}"`);
        // As it is this moment: nobody is to keep it.
        response.setHeader('cache-control', 'no-store');
        response.end(answer);
      }
    });
  }
  return router;
}

const oneValue = (value: unknown): string | null => (typeof value === 'string' ? value : null);

/** What the person can mend is answered; everything else goes on as a failure. */
function problemOf(error: unknown): GraphQLError {
  if (error instanceof GraphQLError) return error;
  throw error;
}

function refuse(response: Response, { message }: GraphQLError): void {
  response.status(400).type('text/plain').send(`${message}\n`);
}
