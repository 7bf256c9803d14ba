import type { GraphQLResolveInfo } from 'graphql';
import { Arg, FieldResolver, Info, Int, Resolver, Root } from 'type-graphql';
import { loadedField } from '../../api/kit/loadRelations.js';
import { Item } from '../items/item.type.js';
import { FitOutPosition } from '../models/fitOutPosition.type.js';
import { PartType } from '../parts/partType.type.js';
import { PreferredSeries } from '../reference/valueCodes.type.js';
import { Donor, MissingPart, MissingPartsCost } from './missingParts.type.js';
import { ReplacementList } from './replacementList.type.js';

@Resolver(() => Item)
export class ReplacementsOfItemResolver {
  @FieldResolver(() => ReplacementList, {
    description: 'Its capacitors grouped into an order, with values that are made today.',
  })
  replacementList(
    @Root() item: object,
    @Info() info: GraphQLResolveInfo,
    @Arg('series', () => PreferredSeries, {
      defaultValue: 'E6',
      description: 'The series to order from; capacitors are customarily made in E6.',
    })
    _series: PreferredSeries,
    @Arg('spares', () => Int, { defaultValue: 1, description: 'Spares a line, 0 to 100.' })
    _spares: number,
  ) {
    return loadedField(item, info);
  }

  @FieldResolver(() => [MissingPart], {
    description: 'What it lacks against the fit-out of its model, required parts first.',
  })
  missingParts(@Root() item: object, @Info() info: GraphQLResolveInfo) {
    return loadedField(item, info);
  }

  @FieldResolver(() => MissingPartsCost, {
    description: 'What the required parts that it lacks would cost by the prices noted.',
  })
  missingPartsCost(@Root() item: object, @Info() info: GraphQLResolveInfo) {
    return loadedField(item, info);
  }
}

@Resolver(() => MissingPart)
export class MissingPartResolver {
  @FieldResolver(() => FitOutPosition, { description: 'The position, with its zone.' })
  position(@Root() missing: object, @Info() info: GraphQLResolveInfo) {
    return loadedField(missing, info);
  }

  @FieldResolver(() => PartType, {
    nullable: true,
    description: 'What belongs there, and its substitutes; null if not said.',
  })
  partType(@Root() missing: object, @Info() info: GraphQLResolveInfo) {
    return loadedField(missing, info);
  }

  @FieldResolver(() => [Donor], {
    description:
      'Sets of the collection that have one fitted, those to be taken apart first; at most 10.',
  })
  donors(@Root() missing: object, @Info() info: GraphQLResolveInfo) {
    return loadedField(missing, info);
  }
}

@Resolver(() => Donor)
export class DonorResolver {
  @FieldResolver(() => Item, { description: 'The set.' })
  item(@Root() donor: object, @Info() info: GraphQLResolveInfo) {
    return loadedField(donor, info);
  }
}
