import type { GraphQLResolveInfo } from 'graphql';
import { Arg, Args, Ctx, FieldResolver, Info, Mutation, Query, Resolver, Root } from 'type-graphql';
import type { ApiContext } from '../../api/kit/apiContext.js';
import { carryOut } from '../../api/kit/carryOut.js';
import { loadedField } from '../../api/kit/loadRelations.js';
import { PageArgs } from '../../api/kit/pageArgs.js';
import { payloadOf } from '../../api/kit/payloadOf.js';
import { rootPage } from '../../api/kit/rootPage.js';
import { changePlace } from './changePlace.js';
import { createPlace } from './createPlace.js';
import { ChangePlaceInput, CreatePlaceInput } from './place.inputs.js';
import { placeReads } from './place.reads.js';
import { Place, PlaceConnection } from './place.type.js';

const asPlace = { field: 'place', typeName: 'Place' };
const CreatePlacePayload = payloadOf('createPlace', 'place', () => Place, 'The new place.');
const ChangePlacePayload = payloadOf(
  'changePlace',
  'place',
  () => Place,
  'The place as it is now.',
);

@Resolver(() => Place)
export class PlaceResolver {
  @Query(() => PlaceConnection, { description: 'Places by name.' })
  places(@Args() args: PageArgs, @Ctx() context: ApiContext, @Info() info: GraphQLResolveInfo) {
    const { table, columns } = placeReads;
    return rootPage(context, info, args, {
      typeName: 'Place',
      from: table,
      table,
      columns,
      sortBy: 'place.name',
    });
  }

  @FieldResolver(() => Place, { nullable: true, description: 'The place that it is in.' })
  within(@Root() place: object, @Info() info: GraphQLResolveInfo) {
    return loadedField(place, info);
  }

  @FieldResolver(() => [Place], { description: 'The places in it, by name.' })
  inner(@Root() place: object, @Info() info: GraphQLResolveInfo) {
    return loadedField(place, info);
  }

  @Mutation(() => CreatePlacePayload, { description: 'Writes down a new place.' })
  createPlace(
    @Arg('input', () => CreatePlaceInput, { description: 'The new place.' })
    input: CreatePlaceInput,
    @Ctx() context: ApiContext,
    @Info() info: GraphQLResolveInfo,
  ) {
    return carryOut(context, info, asPlace, (work) => createPlace(work, input));
  }

  @Mutation(() => ChangePlacePayload, { description: 'Changes a place, or takes it out of use.' })
  changePlace(
    @Arg('input', () => ChangePlaceInput, { description: 'The change.' }) input: ChangePlaceInput,
    @Ctx() context: ApiContext,
    @Info() info: GraphQLResolveInfo,
  ) {
    return carryOut(context, info, asPlace, (work) => changePlace(work, input));
  }
}
