import {
  getOperationAST,
  GraphQLError,
  OperationTypeNode,
  parse,
  specifiedRules,
  validate,
  type DocumentNode,
  type ExecutionArgs,
  type GraphQLSchema,
} from 'graphql';
import type { SubscribePayload } from 'graphql-ws';
import { documentRules, mostTokens } from './documentLimits.js';
import { refuseTooDear } from './priceQueries.js';

const rules = [...specifiedRules, ...documentRules];
const mostErrors = 20;

/**
 * What a window asks to follow, once it has passed everything that bounds a query over HTTP:
 * tokens, depth, size with its fragments put in, price.
 * @returns what to run, or what is wrong with it.
 */
export function readSubscription(
  schema: GraphQLSchema,
  { query, variables, operationName }: SubscribePayload,
  { isOneTooMany }: { isOneTooMany: boolean },
): ExecutionArgs | readonly GraphQLError[] {
  try {
    if (isOneTooMany) return [refused('One connection may follow 20 things. End one first.')];
    const document = readDocument(query);
    const errors = validate(schema, document, rules, { maxErrors: mostErrors });
    if (errors.length > 0) return errors.map(coded('GRAPHQL_VALIDATION_FAILED'));
    const operation = getOperationAST(document, operationName);
    if (operation?.operation !== OperationTypeNode.SUBSCRIPTION) {
      return [refused('A socket answers subscriptions only. Send the rest to POST /graphql.')];
    }
    refuseTooDear(schema, document, variables, operationName);
    return {
      schema,
      document,
      ...(operationName && { operationName }),
      ...(variables && { variableValues: variables }),
    };
  } catch (error) {
    if (!(error instanceof GraphQLError)) throw error;
    return [error];
  }
}

function readDocument(query: string): DocumentNode {
  try {
    return parse(query, { maxTokens: mostTokens });
  } catch (error) {
    throw error instanceof GraphQLError ? coded('GRAPHQL_PARSE_FAILED')(error) : error;
  }
}

const refused = (message: string): GraphQLError =>
  new GraphQLError(message, { extensions: { code: 'BAD_REQUEST' } });

const coded =
  (code: string) =>
  (error: GraphQLError): GraphQLError =>
    new GraphQLError(error.message, {
      ...(error.nodes && { nodes: error.nodes }),
      source: error.source ?? null,
      positions: error.positions ?? null,
      extensions: { code },
    });
