import { ApolloServer } from '@apollo/server';
import {
  ApolloServerPluginCacheControlDisabled,
  ApolloServerPluginLandingPageDisabled,
} from '@apollo/server/plugin/disabled';
import type { GraphQLSchema } from 'graphql';
import type { ApiContext } from './kit/apiContext.js';
import { compiledExecutor } from './compiledExecutor.js';
import { answerOldMediaType } from './answerOldMediaType.js';
import { documentRules, mostTokens } from './documentLimits.js';
import type { KnownQueries } from './knownQueries.js';
import { limitMutations } from './limitMutations.js';
import { priceQueries } from './priceQueries.js';
import { showError, type ErrorLog } from './showError.js';

/** The GraphQL server over a schema, with every query priced before it runs. */
export function createServer(
  schema: GraphQLSchema,
  log: ErrorLog,
  queries: KnownQueries,
): ApolloServer<ApiContext> {
  return new ApolloServer<ApiContext>({
    gateway: compiledExecutor(schema, queries),
    introspection: true,
    csrfPrevention: true,
    allowBatchedHttpRequests: false,
    includeStacktraceInErrorResponses: false,
    parseOptions: { maxTokens: mostTokens },
    maxRecursiveSelections: true,
    validationRules: documentRules,
    stopOnTerminationSignals: false,
    formatError: showError(log),
    plugins: [
      ApolloServerPluginCacheControlDisabled(),
      ApolloServerPluginLandingPageDisabled(),
      limitMutations,
      priceQueries(schema),
      answerOldMediaType,
    ],
  });
}
