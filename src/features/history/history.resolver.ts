import type { GraphQLResolveInfo } from 'graphql';
import { Args, FieldResolver, Info, Resolver, Root } from 'type-graphql';
import { loadedField } from '../../api/kit/loadRelations.js';
import { PageArgs } from '../../api/kit/pageArgs.js';
import { Item } from '../items/item.type.js';
import { Change, ChangeConnection } from './change.type.js';

@Resolver(() => Change)
export class ChangeResolver {
  @FieldResolver(() => [String], { description: 'Names of the fields that changed.' })
  changedFields(@Root() change: object, @Info() info: GraphQLResolveInfo) {
    return loadedField(change, info);
  }
}

@Resolver(() => Item)
export class ItemHistoryResolver {
  @FieldResolver(() => ChangeConnection, {
    description: "Changes of the item's own data, the latest first.",
  })
  history(@Root() item: object, @Args() _page: PageArgs, @Info() info: GraphQLResolveInfo) {
    return loadedField(item, info);
  }
}
