import { randomUUID } from 'node:crypto';
import { unwrapResolverError } from '@apollo/server/errors';
import { GraphQLError, type GraphQLFormattedError } from 'graphql';

/** Takes down an unexpected failure under the id that the person is given. */
export type ErrorLog = (id: string, error: unknown) => void;

const unexpected = 'INTERNAL_SERVER_ERROR';

/**
 * What of an error leaves the server: a code, a sentence, where in the query; never a stack, SQL or
 * what was submitted. An unexpected failure is logged and answered with the id of its log entry.
 */
export const showError =
  (log: ErrorLog) =>
  (formatted: GraphQLFormattedError, error: unknown): GraphQLFormattedError => {
    const original = unwrapResolverError(error);
    const code = formatted.extensions?.['code'];
    const isKnown = original instanceof GraphQLError && typeof code === 'string';
    const place = {
      ...(formatted.path && { path: formatted.path }),
      ...(formatted.locations && { locations: formatted.locations }),
    };
    if (isKnown && code !== unexpected) {
      return { message: formatted.message, ...place, extensions: { code } };
    }
    // Apollo refuses some requests without a code of their own.
    if (isAskersFault(original)) {
      return { message: original.message, ...place, extensions: { code: 'BAD_REQUEST' } };
    }
    const id = randomUUID();
    log(id, original);
    const message = `Something failed that should not have. It was logged as ${id}; nothing was changed.`;
    return { message, ...place, extensions: { code: unexpected, errorId: id } };
  };

function isAskersFault(error: unknown): error is GraphQLError {
  if (!(error instanceof GraphQLError)) return false;
  const { status } = (error.extensions['http'] ?? {}) as { status?: number };
  return status !== undefined && status >= 400 && status < 500;
}
