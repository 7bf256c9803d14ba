import 'reflect-metadata';
import {
  isInterfaceType,
  isObjectType,
  isScalarType,
  type GraphQLFieldResolver,
  type GraphQLObjectType,
  type GraphQLSchema,
} from 'graphql';
import { buildSchema, type PubSub } from 'type-graphql';
import { reads } from '../features/reads.js';
import { resolvers } from '../features/resolvers.js';
import { globalId } from './kit/globalId.js';
import { loadedField } from './kit/loadRelations.js';

/** The schema with its resolvers, built from the decorated classes. */
export async function buildApiSchema(): Promise<GraphQLSchema> {
  const schema = await buildSchema({
    resolvers: [...resolvers],
    validate: false,
    pubSub: noTopics,
  });
  giveGlobalIds(schema);
  answerRelations(schema);
  showKeptInstants(schema);
  tellTypesAtOnce(schema);
  describe(schema.getQueryType(), 'What can be asked of the collection.');
  describe(
    schema.getMutationType(),
    'What can be done; each answers with the thing or with problems.',
  );
  describe(
    schema.getSubscriptionType(),
    'What can be followed, over the graphql-transport-ws protocol at /graphql.',
  );
  return schema;
}

/**
 * Asked for by the library as soon as there is a subscription. Ours follow the feed of what was
 * committed, which has an order and can be caught up with; messages by topic have neither.
 */
const noTopics: PubSub = {
  publish: () => {
    throw new Error('nothing is published by topic: subscriptions follow the feed of changes');
  },
  subscribe: () => {
    throw new Error('nothing is published by topic: subscriptions follow the feed of changes');
  },
};

/** Rows hold their own ids; every node shows one that names its type too. */
function giveGlobalIds(schema: GraphQLSchema): void {
  for (const type of Object.values(schema.getTypeMap())) {
    if (!isObjectType(type)) continue;
    if (!type.getInterfaces().some((implemented) => implemented.name === 'Node')) continue;
    const field = type.getFields()['id'];
    if (field) field.resolve = (row: { id: string }) => globalId(type.name, row.id);
  }
}

const fromLoaded: GraphQLFieldResolver<object, unknown> = (row, _args, _context, info) =>
  loadedField(row, info);

/**
 * Relations were looked ahead for: their fields hand out what lies ready, without the instances
 * and parameter lists that type-graphql would make for each row.
 */
function answerRelations(schema: GraphQLSchema): void {
  for (const { typeName, relations } of reads.values()) {
    const type = schema.getType(typeName);
    if (!isObjectType(type)) continue;
    for (const name of Object.keys(relations)) {
      const field = type.getFields()[name];
      if (field) field.resolve = fromLoaded;
    }
  }
}

/** Rows of interfaces say what they are; type-graphql would wrap the answer in a promise. */
function tellTypesAtOnce(schema: GraphQLSchema): void {
  for (const type of Object.values(schema.getTypeMap())) {
    if (isInterfaceType(type)) type.resolveType = (row: { __typename: string }) => row.__typename;
  }
}

const keptInstant = /^\d{4}-\d\d-\d\dT\d\d:\d\d:\d\d\.\d{3}Z$/;

/** Instants are kept as they are shown: no need to read and write each one anew. */
function showKeptInstants(schema: GraphQLSchema): void {
  const scalar = schema.getType('DateTimeISO');
  if (!isScalarType(scalar)) return;
  const serialize = scalar.serialize.bind(scalar);
  scalar.serialize = (value) =>
    typeof value === 'string' && keptInstant.test(value) ? value : serialize(value);
}

function describe(type: GraphQLObjectType | null | undefined, description: string): void {
  if (type) type.description = description;
}
