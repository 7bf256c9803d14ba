import 'reflect-metadata';
import { isObjectType, type GraphQLObjectType, type GraphQLSchema } from 'graphql';
import { buildSchema, type PubSub } from 'type-graphql';
import { resolvers } from '../features/resolvers.js';
import { globalId } from './kit/globalId.js';

/** The schema with its resolvers, built from the decorated classes. */
export async function buildApiSchema(): Promise<GraphQLSchema> {
  const schema = await buildSchema({
    resolvers: [...resolvers],
    validate: false,
    pubSub: noTopics,
  });
  giveGlobalIds(schema);
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

function describe(type: GraphQLObjectType | null | undefined, description: string): void {
  if (type) type.description = description;
}
