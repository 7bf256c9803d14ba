import type { GraphQLResolveInfo } from 'graphql';
import { FieldResolver, Info, Resolver, Root } from 'type-graphql';
import { loadedField } from '../../api/kit/loadRelations.js';
import { PartType } from '../parts/partType.type.js';
import { FitOutPosition } from './fitOutPosition.type.js';
import { Model } from './model.type.js';

@Resolver(() => FitOutPosition)
export class FitOutPositionResolver {
  @FieldResolver(() => Model, { description: 'The model whose fit-out it belongs to.' })
  model(@Root() position: object, @Info() info: GraphQLResolveInfo) {
    return loadedField(position, info);
  }

  @FieldResolver(() => PartType, {
    nullable: true,
    description: 'The part type that belongs there; null if not said.',
  })
  partType(@Root() position: object, @Info() info: GraphQLResolveInfo) {
    return loadedField(position, info);
  }
}
