import { randomUUID } from 'node:crypto';
import type { ErrorRequestHandler } from 'express';
import type { ErrorLog } from './showError.js';

const sentences: Record<string, string> = {
  'entity.too.large':
    'The request is larger than 1 MB. Send less in one go; load long lists with `reglow import`.',
  'entity.parse.failed': 'The request body is not JSON. Send {"query": "…"} as application/json.',
  'encoding.unsupported': 'The request body has an encoding that is not known here. Send UTF-8.',
  'charset.unsupported': 'The request body has a character set that is not known here. Send UTF-8.',
  'request.aborted': 'The request ended before its body was complete.',
};

/** Answers a request that never became GraphQL, in GraphQL's own shape. */
export const answerBrokenBody =
  (log: ErrorLog): ErrorRequestHandler =>
  (error: { type?: string; status?: number }, _request, response, next) => {
    if (response.headersSent) {
      next(error);
      return;
    }
    const sentence = error.type === undefined ? undefined : sentences[error.type];
    if (sentence !== undefined) {
      const extensions = { code: 'BAD_REQUEST' };
      response.status(error.status ?? 400).json({ errors: [{ message: sentence, extensions }] });
      return;
    }
    const id = randomUUID();
    log(id, error);
    const message = `Something failed that should not have. It was logged as ${id}.`;
    const extensions = { code: 'INTERNAL_SERVER_ERROR', errorId: id };
    response.status(500).json({ errors: [{ message, extensions }] });
  };
