import type { GraphQLResolveInfo } from 'graphql';
import { FieldResolver, Info, Resolver, Root } from 'type-graphql';
import { loadedField } from '../../api/kit/loadRelations.js';
import { Item } from '../items/item.type.js';
import { Acquisition } from './acquisition.type.js';
import { LotLine } from './lotLine.type.js';

@Resolver(() => LotLine)
export class LotLineResolver {
  @FieldResolver(() => Item, { nullable: true, description: 'The item; null for sundries.' })
  item(@Root() line: object, @Info() info: GraphQLResolveInfo) {
    return loadedField(line, info);
  }

  @FieldResolver(() => Acquisition, { description: 'The lot that it was in.' })
  acquisition(@Root() line: object, @Info() info: GraphQLResolveInfo) {
    return loadedField(line, info);
  }
}

@Resolver(() => Item)
export class AcquisitionOfItemResolver {
  @FieldResolver(() => Acquisition, {
    nullable: true,
    description: 'The lot that it came in with; null if not recorded.',
  })
  acquisition(@Root() item: object, @Info() info: GraphQLResolveInfo) {
    return loadedField(item, info);
  }

  @FieldResolver(() => LotLine, {
    nullable: true,
    description: 'What of that lot falls to it; null if it came in no lot.',
  })
  lotLine(@Root() item: object, @Info() info: GraphQLResolveInfo) {
    return loadedField(item, info);
  }
}
