import type { GraphQLResolveInfo } from 'graphql';
import { Args, FieldResolver, Info, Resolver, Root } from 'type-graphql';
import { loadedField } from '../../api/kit/loadRelations.js';
import { Item } from '../items/item.type.js';
import { Fitting } from '../parts/fitting.type.js';
import { AsOfArgs, Originality, PositionHistory } from './originality.type.js';

@Resolver(() => Item)
export class OriginalityOfItemResolver {
  @FieldResolver(() => Originality, {
    description: 'What share of it is as it was made: now, or at any past instant.',
  })
  originality(@Root() item: object, @Args() _args: AsOfArgs, @Info() info: GraphQLResolveInfo) {
    return loadedField(item, info);
  }

  @FieldResolver(() => [PositionHistory], {
    description: 'What sat where, position by position, and where each part went.',
  })
  positionHistory(@Root() item: object, @Info() info: GraphQLResolveInfo) {
    return loadedField(item, info);
  }
}

@Resolver(() => PositionHistory)
export class PositionHistoryResolver {
  @FieldResolver(() => [Fitting], { description: 'What sat there, the first first.' })
  fittings(@Root() place: object, @Info() info: GraphQLResolveInfo) {
    return loadedField(place, info);
  }
}

@Resolver(() => Fitting)
export class NextFittingResolver {
  @FieldResolver(() => Fitting, {
    nullable: true,
    description: 'Where the part was fitted next, in this set or another; null if nowhere yet.',
  })
  next(@Root() fitting: object, @Info() info: GraphQLResolveInfo) {
    return loadedField(fitting, info);
  }
}
