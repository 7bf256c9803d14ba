import type { GraphQLResolveInfo } from 'graphql';
import { GraphQLDateTimeISO } from 'graphql-scalars';
import { Arg, FieldResolver, Info, Resolver, Root } from 'type-graphql';
import { loadedField } from '../../api/kit/loadRelations.js';
import { Item } from '../items/item.type.js';
import { ReadinessDerivation } from './derivation.type.js';

@Resolver(() => Item)
export class ItemDerivationResolver {
  @FieldResolver(() => ReadinessDerivation, {
    description: 'How its readiness follows from what is recorded, now or as of a past moment.',
  })
  derivation(
    @Root() item: object,
    @Arg('asOf', () => GraphQLDateTimeISO, {
      nullable: true,
      description: 'A past moment: only what was so by then counts. Now if left out.',
    })
    _asOf: Date | null,
    @Info() info: GraphQLResolveInfo,
  ) {
    return loadedField(item, info);
  }
}
