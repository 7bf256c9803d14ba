import type { GraphQLResolveInfo } from 'graphql';
import { Arg, Args, Ctx, FieldResolver, Info, Mutation, Resolver, Root } from 'type-graphql';
import type { ApiContext } from '../../api/kit/apiContext.js';
import { carryOut } from '../../api/kit/carryOut.js';
import { loadedField } from '../../api/kit/loadRelations.js';
import { payloadOf } from '../../api/kit/payloadOf.js';
import { Item } from '../items/item.type.js';
import { FitOutPosition } from '../models/fitOutPosition.type.js';
import { changeFitting } from './changeFitting.js';
import { Component } from './component.type.js';
import { fitComponent } from './fitComponent.js';
import {
  ChangeFittingInput,
  ComponentsArgs,
  FitComponentInput,
  RemoveComponentInput,
} from './fitting.inputs.js';
import { Fitting, FittingConnection } from './fitting.type.js';
import { removeComponent } from './removeComponent.js';

const asFitting = { field: 'fitting', typeName: 'Fitting' };
const fittingPayload = (mutation: string, description: string) =>
  payloadOf(mutation, 'fitting', () => Fitting, description);
const FitComponentPayload = fittingPayload('fitComponent', 'What sits where since when.');
const RemoveComponentPayload = fittingPayload('removeComponent', 'What sat where until when.');
const ChangeFittingPayload = fittingPayload('changeFitting', 'The fitting as it is now.');

@Resolver(() => Fitting)
export class FittingResolver {
  @FieldResolver(() => Item, { description: 'The rig or accessory.' })
  item(@Root() fitting: object, @Info() info: GraphQLResolveInfo) {
    return loadedField(fitting, info);
  }

  @FieldResolver(() => Component, { description: 'The part that sits, or sat, there.' })
  component(@Root() fitting: object, @Info() info: GraphQLResolveInfo) {
    return loadedField(fitting, info);
  }

  @FieldResolver(() => FitOutPosition, {
    nullable: true,
    description: "The position in the model's fit-out; null where the model has no such place.",
  })
  position(@Root() fitting: object, @Info() info: GraphQLResolveInfo) {
    return loadedField(fitting, info);
  }

  @Mutation(() => FitComponentPayload, {
    description:
      'A component goes into a place of an item. What sits there must come out before, or with it.',
  })
  fitComponent(
    @Arg('input', () => FitComponentInput, { description: 'What goes where, and when.' })
    input: FitComponentInput,
    @Ctx() context: ApiContext,
    @Info() info: GraphQLResolveInfo,
  ) {
    return carryOut(context, info, asFitting, (work) => fitComponent(work, input));
  }

  @Mutation(() => RemoveComponentPayload, { description: 'A component comes out of its place.' })
  removeComponent(
    @Arg('input', () => RemoveComponentInput, { description: 'What comes out, and when.' })
    input: RemoveComponentInput,
    @Ctx() context: ApiContext,
    @Info() info: GraphQLResolveInfo,
  ) {
    return carryOut(context, info, asFitting, (work) => removeComponent(work, input));
  }

  @Mutation(() => ChangeFittingPayload, {
    description: 'Corrects where and when a component sat.',
  })
  changeFitting(
    @Arg('input', () => ChangeFittingInput, { description: 'The correction.' })
    input: ChangeFittingInput,
    @Ctx() context: ApiContext,
    @Info() info: GraphQLResolveInfo,
  ) {
    return carryOut(context, info, asFitting, (work) => changeFitting(work, input));
  }
}

@Resolver(() => Item)
export class ItemComponentsResolver {
  @FieldResolver(() => FittingConnection, {
    description: 'What sits where, by designator: now, or at any past instant.',
  })
  components(
    @Root() item: object,
    @Args() _args: ComponentsArgs,
    @Info() info: GraphQLResolveInfo,
  ) {
    return loadedField(item, info);
  }
}
