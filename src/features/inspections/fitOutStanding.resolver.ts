import type { GraphQLResolveInfo } from 'graphql';
import { FieldResolver, Info, Resolver, Root } from 'type-graphql';
import { loadedField } from '../../api/kit/loadRelations.js';
import { Item } from '../items/item.type.js';
import { FitOutPosition } from '../models/fitOutPosition.type.js';
import { Component } from '../parts/component.type.js';
import { FitOutCheck } from './fitOutCheck.type.js';
import { FitOutStanding } from './fitOutStanding.type.js';

@Resolver(() => FitOutStanding)
export class FitOutStandingResolver {
  @FieldResolver(() => FitOutPosition, { description: 'The position.' })
  position(@Root() standing: object, @Info() info: GraphQLResolveInfo) {
    return loadedField(standing, info);
  }

  @FieldResolver(() => Component, {
    nullable: true,
    description: 'The component fitted or removed; null where the state does not rest on one.',
  })
  component(@Root() standing: object, @Info() info: GraphQLResolveInfo) {
    return loadedField(standing, info);
  }

  @FieldResolver(() => FitOutCheck, {
    nullable: true,
    description: 'The check that the state rests on; null where it rests on something else.',
  })
  check(@Root() standing: object, @Info() info: GraphQLResolveInfo) {
    return loadedField(standing, info);
  }
}

@Resolver(() => Item)
export class ItemFitOutResolver {
  @FieldResolver(() => [FitOutStanding], {
    description:
      "The model's fit-out position by position, with what is there now; empty without a model.",
  })
  fitOut(@Root() item: object, @Info() info: GraphQLResolveInfo) {
    return loadedField(item, info);
  }
}
