import type { GraphQLResolveInfo } from 'graphql';
import { Args, FieldResolver, Info, Resolver, Root } from 'type-graphql';
import { loadedField } from '../../api/kit/loadRelations.js';
import { PageArgs } from '../../api/kit/pageArgs.js';
import { Model } from '../models/model.type.js';
import { MoveConnection } from '../places/move.type.js';
import { Place } from '../places/place.type.js';
import { Item } from './item.type.js';

@Resolver(() => Item)
export class ItemResolver {
  @FieldResolver(() => Model, { nullable: true, description: 'Its model; null if unknown.' })
  model(@Root() item: object, @Info() info: GraphQLResolveInfo) {
    return loadedField(item, info);
  }

  @FieldResolver(() => Place, { nullable: true, description: 'Where it stands; null if unknown.' })
  place(@Root() item: object, @Info() info: GraphQLResolveInfo) {
    return loadedField(item, info);
  }

  @FieldResolver(() => MoveConnection, { description: 'Where it has been, the latest first.' })
  moves(@Root() item: object, @Args() _page: PageArgs, @Info() info: GraphQLResolveInfo) {
    return loadedField(item, info);
  }
}
