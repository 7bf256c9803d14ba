import type { IncomingMessage, RequestListener, ServerResponse } from 'node:http';
import type { RequestHandler } from 'express';
import type { GraphQLSchema } from 'graphql';
import type { ApiContext } from './kit/apiContext.js';
import type { KnownQueries } from './knownQueries.js';
import { refuseTooDear } from './priceQueries.js';

/** A request whose body was read before Express saw it, or could not be. */
export interface EarlyRead extends IncomingMessage {
  body?: unknown;
  bodyFailure?: unknown;
}

interface Answering {
  schema: GraphQLSchema;
  queries: KnownQueries;
  contextNow: () => ApiContext;
  isKnownHost: (host: string | undefined) => boolean;
  /** Bytes of the largest body that is read here. */
  largestBody: number;
  /** Ends a request whose body does not come in time. */
  endSlow: (request: IncomingMessage, response: ServerResponse, next: () => void) => void;
  /** What every answer of this server says in its head. */
  headers: Readonly<Record<string, string>>;
  /** Answers everything else. */
  rest: RequestListener;
}

/**
 * Answers a query that the server knows (`KnownQueries`) without the way through Express and Apollo,
 * which costs as much as reading a set whole. It was parsed, validated and held against the limits
 * when it was met; its price is asked anew, because it hangs on the variables. Whatever else comes,
 * and whatever goes wrong here, goes that way: `rest` gives the same answer, and tells the errors.
 */
export function answerKnown(answering: Answering): RequestListener {
  const { headers, isKnownHost, largestBody, endSlow, rest } = answering;
  return (request: EarlyRead, response) => {
    const mediaType = isQuestion(request, largestBody) ? answeredAs(request.headers.accept) : null;
    if (mediaType === null || !isKnownHost(request.headers.host)) {
      rest(request, response);
      return;
    }
    endSlow(request, response, () => {
      readBody(request, () => {
        void textOf(answering, request.body).then((text) => {
          if (text === null) {
            rest(request, response);
            return;
          }
          const own = { 'content-type': mediaType, 'content-length': Buffer.byteLength(text) };
          response.writeHead(200, { ...headers, ...own }).end(text);
        });
      });
    });
  };
}

/** Leaves on the request what Express would have read. */
function readBody(request: EarlyRead, done: () => void): void {
  const chunks: Buffer[] = [];
  request.on('data', (chunk: Buffer) => chunks.push(chunk));
  request.once('end', () => {
    try {
      request.body = JSON.parse(utf8.decode(Buffer.concat(chunks))) as unknown;
      if (typeof request.body !== 'object' || request.body === null) request.bodyFailure = notJson;
    } catch {
      request.bodyFailure = notJson;
    }
    done();
  });
}

/** Leaves out a byte order mark, as Express does. */
const utf8 = new TextDecoder();

/** As Express names it. */
const notJson = { type: 'entity.parse.failed', status: 400 };

/** Stands where Express would read the body: what could not be read then is a failure now. */
export const takeEarlyRead: RequestHandler = (request: EarlyRead, _response, next) => {
  next(request.bodyFailure);
};

async function textOf(answering: Answering, body: unknown): Promise<string | null> {
  const { schema, queries, contextNow } = answering;
  try {
    const question = readQuestion(body);
    const query = question && queries.find(question.query, question.operationName);
    if (!query) return null;
    const { variables, operationName } = question;
    refuseTooDear(schema, query.document, variables, operationName);
    const { data, errors } = await queries.run(query, contextNow(), variables);
    return errors ? null : `${JSON.stringify({ data })}\n`;
  } catch {
    return null;
  }
}

/** A question in the shape that clients send; null for every other. */
function readQuestion(body: unknown) {
  if (!isRecord(body)) return null;
  const { query, operationName = null, variables = null, extensions = null } = body;
  if (typeof query !== 'string' || extensions !== null) return null;
  if (operationName !== null && typeof operationName !== 'string') return null;
  if (variables !== null && !isRecord(variables)) return null;
  return { query, operationName, variables: variables ?? {} };
}

const isRecord = (value: unknown): value is Record<string, unknown> =>
  typeof value === 'object' && value !== null && !Array.isArray(value);

function isQuestion({ method, url, headers }: IncomingMessage, largestBody: number): boolean {
  const length = Number(headers['content-length']);
  return (
    method === 'POST' &&
    url === '/graphql' &&
    /^application\/json(; ?charset=utf-8)?$/i.test(headers['content-type'] ?? '') &&
    headers['content-encoding'] === undefined &&
    length > 0 &&
    length <= largestBody
  );
}

const newMediaType = 'application/graphql-response+json';

/** The media type for what clients commonly accept; null leaves the choice to Apollo. */
function answeredAs(accept: string | undefined): string | null {
  if (accept === undefined || accept === '*/*' || accept === 'application/json') {
    return 'application/json; charset=utf-8';
  }
  // The first of several that are not weighted is preferred.
  const isNewPreferred = accept === newMediaType || accept.startsWith(`${newMediaType},`);
  return isNewPreferred ? `${newMediaType}; charset=utf-8` : null;
}
