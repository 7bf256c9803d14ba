import type { ApolloServerPlugin } from '@apollo/server';
import {
  GraphQLError,
  Kind,
  TypeInfo,
  getNamedType,
  getOperationAST,
  getVariableValues,
  isListType,
  isNonNullType,
  visit,
  visitWithTypeInfo,
  type DocumentNode,
  type GraphQLSchema,
} from 'graphql';
import {
  fieldExtensionsEstimator,
  getComplexity,
  type ComplexityEstimator,
} from 'graphql-query-complexity';
import type { ApiContext } from './kit/apiContext.js';
import { keptFor } from './kit/keptFor.js';
import { defaultPageSize } from './kit/pageArgs.js';

/** Values that one answer may hold at the most, by the count of what was asked. */
export const highestPrice = 100_000;
/** What a plain list is taken to hold; what can grow beyond that is a connection. */
const plainListLength = 10;

/** Each field costs one; what is below a list costs as often as the list may be long. */
const byLength: ComplexityEstimator = ({ field, args, childComplexity, type }) => {
  const first: unknown = args['first'];
  const isPaged = field.args.some((argument) => argument.name === 'first');
  if (isPaged) return 1 + (typeof first === 'number' ? first : defaultPageSize) * childComplexity;
  const bare = isNonNullType(field.type) ? field.type.ofType : field.type;
  const isPlainList = isListType(bare) && !getNamedType(type).name.endsWith('Connection');
  return 1 + (isPlainList ? plainListLength : 1) * childComplexity;
};

/** Refuses a query that asks for too much, before any of it runs. */
export const priceQueries = (schema: GraphQLSchema): ApolloServerPlugin<ApiContext> => ({
  requestDidStart: () =>
    Promise.resolve({
      didResolveOperation: ({ request, document }) => {
        refuseTooDear(schema, document, request.variables, request.operationName);
        return Promise.resolve();
      },
    }),
});

/** @throws GraphQLError when the operation asks for more than may be asked in one go. */
export function refuseTooDear(
  schema: GraphQLSchema,
  query: DocumentNode,
  variables?: Record<string, unknown> | null,
  operationName?: string | null,
): void {
  const names = variablesOf(query, '', () => priceVariables(schema, query));
  const known = affordableOf(query, '', () => new Set());
  const given = variables ?? {};
  const asked = JSON.stringify([operationName ?? null, ...names.map((name) => given[name])]);
  if (known.has(asked)) return;
  const operation = getOperationAST(query, operationName);
  const { errors } = getVariableValues(schema, operation?.variableDefinitions ?? [], given);
  // Wrong variables are refused by the execution, in its own words, before anything runs.
  if (errors) return;
  const price = getComplexity({
    schema,
    query,
    // What a field says of itself goes first: some are far dearer than they look.
    estimators: [fieldExtensionsEstimator(), byLength],
    variables: given,
    ...(operationName && { operationName }),
  });
  if (price > highestPrice) throw tooDear(price);
  if (known.size >= mostKept) known.clear();
  known.add(asked);
}

const mostKept = 50;
const variablesOf = keptFor<DocumentNode, string[]>();
const affordableOf = keptFor<DocumentNode, Set<string>>();

/**
 * The variables that the price hangs on: page sizes, what is left out of the query, and whatever a
 * field is given that prices itself.
 */
function priceVariables(schema: GraphQLSchema, document: DocumentNode): string[] {
  const names = new Set<string>();
  const types = new TypeInfo(schema);
  visit(
    document,
    visitWithTypeInfo(types, {
      [Kind.ARGUMENT]: (argument) => {
        const isPriced =
          argument.name.value === 'first' ||
          argument.name.value === 'if' ||
          types.getFieldDef()?.extensions['complexity'] !== undefined;
        if (!isPriced) return;
        visit(argument, {
          [Kind.VARIABLE]: ({ name }) => {
            names.add(name.value);
          },
        });
      },
    }),
  );
  return [...names];
}

const tooDear = (price: number): GraphQLError =>
  new GraphQLError(
    `This query could ask for ${price} values; ${highestPrice} is the most in one go. ` +
      'Ask for fewer rows ("first"), or for fewer lists inside lists.',
    { extensions: { code: 'QUERY_TOO_COSTLY', http: { status: 400 } } },
  );
