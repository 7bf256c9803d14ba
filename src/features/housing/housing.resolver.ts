import type { GraphQLResolveInfo } from 'graphql';
import { Arg, Ctx, FieldResolver, Info, Mutation, Resolver, Root } from 'type-graphql';
import type { ApiContext } from '../../api/kit/apiContext.js';
import { carryOut } from '../../api/kit/carryOut.js';
import { loadedField } from '../../api/kit/loadRelations.js';
import { payloadOf } from '../../api/kit/payloadOf.js';
import { Accessory } from '../items/accessory.type.js';
import { houseAccessory } from './houseAccessory.js';
import { HouseAccessoryInput, TakeOutOfHousingInput } from './housing.inputs.js';
import { takeOutOfHousing } from './takeOutOfHousing.js';

const asAccessory = { field: 'accessory', typeName: 'Accessory' };
const asItIsNow = 'The accessory as it is now.';
const HouseAccessoryPayload = payloadOf('houseAccessory', 'accessory', () => Accessory, asItIsNow);
const TakeOutOfHousingPayload = payloadOf(
  'takeOutOfHousing',
  'accessory',
  () => Accessory,
  asItIsNow,
);

@Resolver(() => Accessory)
export class HousingResolver {
  @FieldResolver(() => Accessory, {
    nullable: true,
    description: 'The accessory in whose housing it sits; null if it stands by itself.',
  })
  housedIn(@Root() accessory: object, @Info() info: GraphQLResolveInfo) {
    return loadedField(accessory, info);
  }

  @FieldResolver(() => [Accessory], { description: 'The accessories that sit in its housing.' })
  houses(@Root() accessory: object, @Info() info: GraphQLResolveInfo) {
    return loadedField(accessory, info);
  }

  @Mutation(() => HouseAccessoryPayload, {
    description: 'Puts an accessory into the housing of another.',
  })
  houseAccessory(
    @Arg('input', () => HouseAccessoryInput, { description: 'What goes into what.' })
    input: HouseAccessoryInput,
    @Ctx() context: ApiContext,
    @Info() info: GraphQLResolveInfo,
  ) {
    return carryOut(context, info, asAccessory, (work) => houseAccessory(work, input));
  }

  @Mutation(() => TakeOutOfHousingPayload, {
    description: 'Takes an accessory out of the housing that it sits in.',
  })
  takeOutOfHousing(
    @Arg('input', () => TakeOutOfHousingInput, { description: 'What comes out.' })
    input: TakeOutOfHousingInput,
    @Ctx() context: ApiContext,
    @Info() info: GraphQLResolveInfo,
  ) {
    return carryOut(context, info, asAccessory, (work) => takeOutOfHousing(work, input));
  }
}
