import type { GraphQLResolveInfo } from 'graphql';
import { GraphQLDateTimeISO } from 'graphql-scalars';
import { Arg, Ctx, FieldResolver, Info, Query, Resolver, Root } from 'type-graphql';
import type { ApiContext } from '../../api/kit/apiContext.js';
import { loadedField, loadRelations } from '../../api/kit/loadRelations.js';
import { Accessory } from '../items/accessory.type.js';
import { Rig } from '../items/rig.type.js';
import { pastMoment } from '../../api/kit/pastMoment.js';
import { readShack } from './readShack.js';
import { LeftOutRig, RoleFilled, ServedRig, Shack } from './shack.type.js';
import { shackAnswer } from './shackAnswer.js';

@Resolver(() => Shack)
export class ShackResolver {
  @Query(() => Shack, {
    description: 'The most rigs that can be on the air at once, and with what.',
  })
  async shack(
    @Arg('asOf', () => GraphQLDateTimeISO, {
      nullable: true,
      description: 'A past moment; now if left out.',
    })
    asOf: Date | null,
    @Ctx() context: ApiContext,
    @Info() info: GraphQLResolveInfo,
  ) {
    const atMs = pastMoment(asOf, context.nowMs);
    const { facts, model, zone } = await readShack(context.database.reader, atMs);
    const answer = shackAnswer(facts, model, { atMs, zone });
    await loadRelations(context, info, 'Shack', [answer]);
    return answer;
  }

  @FieldResolver(() => [ServedRig], { description: 'The set, with what serves each of its rigs.' })
  served(@Root() shack: object, @Info() info: GraphQLResolveInfo) {
    return loadedField(shack, info);
  }

  @FieldResolver(() => [LeftOutRig], { description: 'Every other rig, and why it is left out.' })
  leftOut(@Root() shack: object, @Info() info: GraphQLResolveInfo) {
    return loadedField(shack, info);
  }
}

@Resolver(() => ServedRig)
export class ServedRigResolver {
  @FieldResolver(() => Rig, { description: 'The rig.' })
  rig(@Root() served: object, @Info() info: GraphQLResolveInfo) {
    return loadedField(served, info);
  }

  @FieldResolver(() => [RoleFilled], {
    description: 'What fills each role that it cannot do without.',
  })
  servedBy(@Root() served: object, @Info() info: GraphQLResolveInfo) {
    return loadedField(served, info);
  }
}

@Resolver(() => RoleFilled)
export class RoleFilledResolver {
  @FieldResolver(() => Accessory, { description: 'The accessory.' })
  accessory(@Root() role: object, @Info() info: GraphQLResolveInfo) {
    return loadedField(role, info);
  }
}

@Resolver(() => LeftOutRig)
export class LeftOutRigResolver {
  @FieldResolver(() => Rig, { description: 'The rig.' })
  rig(@Root() left: object, @Info() info: GraphQLResolveInfo) {
    return loadedField(left, info);
  }
}
