import { GraphQLError, type GraphQLResolveInfo } from 'graphql';
import { Arg, Ctx, ID, Info, Query, Resolver } from 'type-graphql';
import type { ApiContext } from '../../api/kit/apiContext.js';
import { splitGlobalId } from '../../api/kit/globalId.js';
import { loadRelations } from '../../api/kit/loadRelations.js';
import { Node } from '../../api/kit/node.type.js';

@Resolver()
export class NodeResolver {
  @Query(() => Node, {
    nullable: true,
    description: 'Anything, by its id; null if it is not there.',
  })
  async node(
    @Arg('id', () => ID, { description: 'As the API gave it.' }) id: string,
    @Ctx() context: ApiContext,
    @Info() info: GraphQLResolveInfo,
  ) {
    const split = splitGlobalId(id);
    const reads = split && context.reads.get(split.typeName);
    if (!split || !reads) {
      throw new GraphQLError(`"${id.slice(0, 60)}" is not an id that this API gave.`, {
        extensions: { code: 'BAD_USER_INPUT' },
      });
    }
    const [row] = await reads.byIds(context, [split.id]);
    if (!row) return null;
    row.__typename ??= reads.typeName;
    await loadRelations(context, info, reads.typeName, [row]);
    return row;
  }
}
