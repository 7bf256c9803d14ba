import { Router, type Request, type Response } from 'express';
import { GraphQLError } from 'graphql';
import { AttachmentStore } from '../features/attachments/attachmentStore.js';
import { dossierAsked } from '../features/dossier/dossierAsked.js';
import { writeDossier } from '../features/dossier/writeDossier.js';
import { itemIdByNumber } from '../features/reports/itemIdByNumber.js';
import { argumentProblem } from './kit/argumentProblem.js';
import type { ApiContext } from './kit/apiContext.js';

const formats = { html: 'HTML', pdf: 'PDF' } as const;

/** It runs nothing and fetches nothing; its pictures and its looks are in it. */
const policyOfPage =
  "default-src 'none'; img-src data:; style-src 'unsafe-inline'; frame-ancestors 'self'; sandbox";

/** Dossiers as files: `/download/dossier.pdf?item=R-001&reader=insurer&withhold=people,prices`. */
export function serveDossiers(contextNow: () => ApiContext): Router {
  const router = Router();
  for (const [ending, format] of Object.entries(formats)) {
    router.get(`/dossier.${ending}`, async (request, response) => {
      try {
        const { bytes, number } = await dossierFor(contextNow(), request, format);
        const place = request.query['show'] === undefined ? 'attachment' : 'inline';
        response
          .set('Content-Type', format === 'PDF' ? 'application/pdf' : 'text/html; charset=utf-8')
          .set('Content-Disposition', `${place}; filename="dossier-${fileSafe(number)}.${ending}"`)
          .set('Cache-Control', 'no-store');
        if (format === 'HTML') response.set('Content-Security-Policy', policyOfPage);
        response.end(bytes);
      } catch (error) {
        if (!(error instanceof GraphQLError)) throw error;
        refuse(response, error);
      }
    });
  }
  return router;
}

async function dossierFor(context: ApiContext, { query }: Request, format: 'HTML' | 'PDF') {
  const { database, attachmentsFolder, nowMs } = context;
  const number = typeof query['item'] === 'string' ? query['item'] : null;
  const itemId = await itemIdByNumber(database.reader, number);
  if (number === null || itemId === null) {
    throw argumentProblem('Say of which item: item=R-001, its inventory number.');
  }
  const { choice, form } = dossierAsked(query, format, new Date(nowMs).toISOString().slice(0, 10));
  const store = attachmentsFolder === null ? null : new AttachmentStore(attachmentsFolder);
  const bytes = await writeDossier(database, store, itemId, choice, form);
  if (bytes === null) throw argumentProblem(`There is no item ${number}.`);
  return { bytes, number };
}

/** A header takes plain signs only. */
const fileSafe = (number: string): string => number.replaceAll(/[^\w.-]/g, '_');

function refuse(response: Response, { message }: GraphQLError): void {
  response.status(400).type('text/plain').send(`${message}\n`);
}
