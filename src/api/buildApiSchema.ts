import 'reflect-metadata';
import { isObjectType, type GraphQLSchema } from 'graphql';
import { buildSchema } from 'type-graphql';
import { resolvers } from '../features/resolvers.js';
import { globalId } from './kit/globalId.js';

/** The schema with its resolvers, built from the decorated classes. */
export async function buildApiSchema(): Promise<GraphQLSchema> {
  const schema = await buildSchema({ resolvers: [...resolvers], validate: false });
  giveGlobalIds(schema);
  return schema;
}

/** Rows hold their own ids; every node shows one that names its type too. */
function giveGlobalIds(schema: GraphQLSchema): void {
  for (const type of Object.values(schema.getTypeMap())) {
    if (!isObjectType(type)) continue;
    if (!type.getInterfaces().some((implemented) => implemented.name === 'Node')) continue;
    const field = type.getFields()['id'];
    if (field) field.resolve = (row: { id: string }) => globalId(type.name, row.id);
  }
}
