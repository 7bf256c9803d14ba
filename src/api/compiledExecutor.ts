// cspell:words Supergraph
import type { ApolloServerOptionsWithGateway } from '@apollo/server';
import {
  OperationTypeNode,
  execute,
  getVariableValues,
  type DocumentNode,
  type ExecutionResult,
  type GraphQLSchema,
} from 'graphql';
import type { ApiContext } from './kit/apiContext.js';
import { compileQuery, isCompiledQuery, type CompiledQuery } from 'graphql-jit';

type GatewayInterface = ApolloServerOptionsWithGateway<ApiContext>['gateway'];
type Executor = NonNullable<Awaited<ReturnType<GatewayInterface['load']>>['executor']>;
type Request = Parameters<Executor>[0];

/** Compiling costs as much as running a few times: it is for what is asked again and again. */
const timesBeforeCompiling = 3;

/** One operation of a document that is known: how often it was asked, and what came of compiling. */
interface Known {
  asked: number;
  compiled: CompiledQuery | null;
}

/**
 * Hands Apollo an executor that compiles the queries it meets again and again to plain functions
 * (`graphql-jit`); everything else, and every mutation, runs as `graphql` runs it. What Apollo does
 * before that (parsing, validation, prices, limits) stays as it is. A gateway is the one place where
 * Apollo takes an executor.
 */
export function compiledExecutor(schema: GraphQLSchema): GatewayInterface {
  const known = new WeakMap<DocumentNode, Map<string, Known>>();
  const executor: Executor = async (request) => {
    const { document, operation, operationName } = request;
    // Apollo asks for the execution of no operation too, to hear what is wrong with it.
    if (operation?.operation !== OperationTypeNode.QUERY) return interpreted(schema, request);
    let operations = known.get(document);
    if (!operations) known.set(document, (operations = new Map<string, Known>()));
    const name = operationName ?? '';
    const one = operations.get(name) ?? { asked: 0, compiled: null };
    operations.set(name, one);
    one.asked += 1;
    if (one.asked === timesBeforeCompiling) {
      const outcome = compileQuery(schema, document, operationName ?? undefined, {
        disablingCapturingStackErrors: true,
      });
      if (isCompiledQuery(outcome)) one.compiled = outcome;
    }
    if (!one.compiled) return interpreted(schema, request);
    const variables = request.request.variables ?? {};
    const { errors } = getVariableValues(schema, operation.variableDefinitions ?? [], variables);
    // The sentences about wrong variables are those of `graphql`, whoever executes.
    if (errors) return { errors };
    const result = (await one.compiled.query(
      undefined,
      request.context,
      variables,
    )) as ExecutionResult;
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
