import { HeaderMap, type ApolloServer } from '@apollo/server';
import express, { Router, type Request, type Response } from 'express';
import type { GraphQLSchema } from 'graphql';
import { documentOutline } from '../../features/publishedDocuments/documentOutline.js';
import { hideTexts } from '../../features/publishedDocuments/hideTexts.js';
import {
  documentCalled,
  type PublishedDocument,
} from '../../features/publishedDocuments/publishedDocuments.js';
import { notForThis, type Admission } from '../../features/readTokens/admitToken.js';
import { hidingFor } from '../../features/readTokens/hidingFor.js';
import type { ApiContext } from '../kit/apiContext.js';
import { admitted, type Door } from './admitted.js';
import { documentRequest, type DocumentRequest } from './documentRequest.js';

const largestBody = '1mb';
const newMediaType = 'application/graphql-response+json';

interface Serving {
  apollo: ApolloServer<ApiContext>;
  schema: GraphQLSchema;
  contextNow: () => ApiContext;
}

/** `/documents/<name>` and `/documents?documentId=sha256:…`: published documents and no others. */
export function serveDocuments(serving: Serving): Router {
  const router = Router();
  const door: Door = {
    scope: 'DOCUMENTS',
    mayBeInAddress: false,
    contextNow: serving.contextNow,
    refuse,
  };
  const readBody = express.json({ limit: largestBody });
  const answer = admitted(door, async (request, response, admission, context) => {
    if (request.method === 'POST' && !request.is('application/json')) {
      response.status(415);
      refuse(response, 'Send the body as application/json.', request);
      return;
    }
    // The body of somebody without a token is not even read.
    await new Promise<void>((resolve, reject) => {
      readBody(request, response, (error?: Error) => {
        if (error === undefined) resolve();
        else reject(error);
      });
    });
    await answerDocument(serving, { request, response, admission, context });
  });
  router.route(['/documents', '/documents/:name']).get(answer).post(answer);
  return router;
}

interface Asked {
  request: Request;
  response: Response;
  admission: Admission;
  context: ApiContext;
}

async function answerDocument(serving: Serving, asked: Asked): Promise<void> {
  const { request, response, admission } = asked;
  const wanted = documentRequest(request);
  if ('why' in wanted) {
    response.status(400);
    refuse(response, wanted.why, request);
    return;
  }
  const published = documentCalled(wanted.documentId);
  if (!published) {
    response.status(404);
    refuse(response, 'No document of this name or digest is published here.', request);
    return;
  }
  const { needs, textKeys } = documentOutline(serving.schema, published.document);
  const missing = needs.filter((need) => !admission.shows.has(need));
  if (missing.length > 0) {
    const { status, reason } = notForThis(
      `This document shows ${missing.join(', ')}, which this token may not. Make one that may.`,
    );
    response.status(status);
    refuse(response, reason, request);
    return;
  }
  await runDocument(serving, asked, { published, wanted, textKeys });
}

async function runDocument(
  { apollo }: Serving,
  { request, response, admission, context }: Asked,
  of: { published: PublishedDocument; wanted: DocumentRequest; textKeys: ReadonlySet<string> },
): Promise<void> {
  const { operationName, variables } = of.wanted;
  const { status, headers, body } = await apollo.executeHTTPGraphQLRequest({
    httpGraphQLRequest: {
      method: 'POST',
      headers: new HeaderMap([
        ['content-type', 'application/json'],
        ['accept', request.headers.accept ?? '*/*'],
      ]),
      search: '',
      body: {
        query: of.published.text,
        variables,
        ...(operationName !== null && { operationName }),
      },
    },
    context: () => Promise.resolve(context),
  });
  if (body.kind !== 'complete') throw new Error('a published document is answered in one piece');
  const type = headers.get('content-type');
  if (type !== undefined) response.set('Content-Type', type);
  const hiding = await hidingFor(context.database.reader, admission.shows);
  const answer = JSON.parse(body.string) as Record<string, unknown>;
  const shown = { ...answer, data: hideTexts(answer['data'], of.textKeys, hiding) };
  response.status(status ?? 200).end(JSON.stringify(shown));
}

/** A refusal is a well-formed GraphQL response with a single error. */
function refuse(response: Response, reason: string, request: Request): void {
  const isNew = request.headers.accept?.includes(newMediaType) === true;
  response
    .type(isNew ? newMediaType : 'application/json')
    .send(JSON.stringify({ errors: [{ message: reason }] }));
}
