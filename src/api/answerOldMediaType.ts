import type { ApolloServerPlugin } from '@apollo/server';
import type { ApiContext } from './kit/apiContext.js';

const requestErrors = new Set([
  'GRAPHQL_PARSE_FAILED',
  'GRAPHQL_VALIDATION_FAILED',
  'BAD_USER_INPUT',
]);

/**
 * GraphQL over HTTP, "application/json": a well-formed GraphQL response with errors is answered
 * with 200; Apollo answers 400. The newer media type `application/graphql-response+json` keeps 400.
 * Source: GraphQL over HTTP specification, section 6.4.1; audit of the `graphql-http` package.
 */
export const answerOldMediaType: ApolloServerPlugin<ApiContext> = {
  requestDidStart: () =>
    Promise.resolve({
      willSendResponse: ({ request, response, errors }) => {
        const accepts = request.http?.headers.get('accept') ?? '';
        const isRequestError = errors?.some((error) =>
          requestErrors.has(String(error.extensions['code'])),
        );
        const isOld = !accepts.includes('application/graphql-response+json');
        if (response.http.status === 400 && isOld && isRequestError) response.http.status = 200;
        return Promise.resolve();
      },
    }),
};
