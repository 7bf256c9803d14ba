// cspell:words Supergraph
import type { ApolloServerOptionsWithGateway } from '@apollo/server';
import { OperationTypeNode, execute, type ExecutionResult, type GraphQLSchema } from 'graphql';
import type { ApiContext } from './kit/apiContext.js';
import type { KnownQueries } from './knownQueries.js';

type GatewayInterface = ApolloServerOptionsWithGateway<ApiContext>['gateway'];
type Executor = NonNullable<Awaited<ReturnType<GatewayInterface['load']>>['executor']>;
type Request = Parameters<Executor>[0];

/**
 * Hands Apollo an executor that compiles the queries it meets again and again; everything else, and
 * every mutation, runs as `graphql` runs it. What Apollo does before that (parsing, validation,
 * prices, limits) stays as it is. A gateway is the one place where Apollo takes an executor.
 */
export function compiledExecutor(schema: GraphQLSchema, queries: KnownQueries): GatewayInterface {
  const executor: Executor = async (request) => {
    const { document, operation, source } = request;
    // Apollo asks for the execution of no operation too, to hear what is wrong with it.
    if (operation?.operation !== OperationTypeNode.QUERY) return interpreted(schema, request);
    const query = queries.meet(source, document, operation, request.request.operationName ?? null);
    if (!query) return interpreted(schema, request);
    const variables = request.request.variables ?? {};
    const result = await queries.run(query, request.context as ApiContext, variables);
    // Asked once more, and only to read: what went wrong is told in `graphql`'s own errors.
    return result.errors ? interpreted(schema, request) : result;
  };
  return {
    onSchemaLoadOrUpdate: (callback) => {
      callback({ apiSchema: schema, coreSupergraphSdl: '' });
      return () => undefined;
    },
    load: () => Promise.resolve({ executor }),
    stop: () => Promise.resolve(),
  };
}

const interpreted = async (schema: GraphQLSchema, request: Request): Promise<ExecutionResult> =>
  execute({
    schema,
    document: request.document,
    contextValue: request.context,
    variableValues: request.request.variables ?? null,
    operationName: request.request.operationName ?? null,
  });
