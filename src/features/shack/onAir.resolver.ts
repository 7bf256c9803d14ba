import type { GraphQLResolveInfo } from 'graphql';
import { Args, Ctx, FieldResolver, Info, Query, Resolver, Root } from 'type-graphql';
import type { ApiContext } from '../../api/kit/apiContext.js';
import { loadedField, loadRelations } from '../../api/kit/loadRelations.js';
import { Rig } from '../items/rig.type.js';
import { Reading } from '../readings/reading.type.js';
import { onAir } from './onAir.js';
import { OnAirAnswer, OnAirArgs, OnAirRig } from './onAir.type.js';
import { LeftOutRig, RoleFilled } from './shack.type.js';

@Resolver(() => OnAirAnswer)
export class OnAirResolver {
  @Query(() => OnAirAnswer, {
    description:
      'Which rigs can be on the air on a band, in a mode, with so much power; and with what.',
  })
  async onAir(
    @Args() args: OnAirArgs,
    @Ctx() context: ApiContext,
    @Info() info: GraphQLResolveInfo,
  ) {
    const answer = await onAir(context, args);
    await loadRelations(context, info, 'OnAirAnswer', [answer]);
    return answer;
  }

  @FieldResolver(() => [OnAirRig], { description: 'The rigs that can, by inventory number.' })
  rigs(@Root() answer: object, @Info() info: GraphQLResolveInfo) {
    return loadedField(answer, info);
  }

  @FieldResolver(() => [LeftOutRig], {
    description: 'Rigs that work on that band and mode but cannot go on the air so, and why.',
  })
  leftOut(@Root() answer: object, @Info() info: GraphQLResolveInfo) {
    return loadedField(answer, info);
  }
}

@Resolver(() => OnAirRig)
export class OnAirRigResolver {
  @FieldResolver(() => Rig, { description: 'The rig.' })
  rig(@Root() able: object, @Info() info: GraphQLResolveInfo) {
    return loadedField(able, info);
  }

  @FieldResolver(() => [RoleFilled], {
    description: 'What serves it: with the others at once, or else alone.',
  })
  servedBy(@Root() able: object, @Info() info: GraphQLResolveInfo) {
    return loadedField(able, info);
  }

  @FieldResolver(() => Reading, {
    nullable: true,
    description: 'The reading that the power rests on; null where the model decides.',
  })
  reading(@Root() able: object, @Info() info: GraphQLResolveInfo) {
    return loadedField(able, info);
  }
}
