import type { GraphQLResolveInfo } from 'graphql';
import { Arg, Args, Ctx, FieldResolver, Float, Info, Mutation, Resolver, Root } from 'type-graphql';
import type { ApiContext } from '../../api/kit/apiContext.js';
import { carryOut } from '../../api/kit/carryOut.js';
import { loadedField } from '../../api/kit/loadRelations.js';
import { PageArgs } from '../../api/kit/pageArgs.js';
import { payloadOf } from '../../api/kit/payloadOf.js';
import { Item } from '../items/item.type.js';
import { Component } from '../parts/component.type.js';
import { Party } from '../parties/party.type.js';
import { changeUse } from './changeUse.js';
import { recordUse } from './recordUse.js';
import { ChangeUseInput, RecordUseInput } from './use.inputs.js';
import { MaintenanceRule, OnAirUse, OnAirUseConnection, UseSum } from './use.type.js';

const asUse = { field: 'use', typeName: 'OnAirUse' };
const usePayload = (mutation: string, description: string) =>
  payloadOf(mutation, 'use', () => OnAirUse, description);
const RecordUsePayload = usePayload('recordUse', 'The use of the rig.');
const ChangeUsePayload = usePayload('changeUse', 'The use of the rig as it is now.');

@Resolver(() => OnAirUse)
export class OnAirUseResolver {
  @FieldResolver(() => Item, { description: 'The rig, or the accessory that served it.' })
  item(@Root() use: object, @Info() info: GraphQLResolveInfo) {
    return loadedField(use, info);
  }

  @FieldResolver(() => Party, { nullable: true, description: 'Who operated it; null if unsaid.' })
  operator(@Root() use: object, @Info() info: GraphQLResolveInfo) {
    return loadedField(use, info);
  }

  @Mutation(() => RecordUsePayload, { description: 'Writes down that a rig was on the air.' })
  recordUse(
    @Arg('input', () => RecordUseInput, { description: 'What was used, when, how long.' })
    input: RecordUseInput,
    @Ctx() context: ApiContext,
    @Info() info: GraphQLResolveInfo,
  ) {
    return carryOut(context, info, asUse, (work) => recordUse(work, input));
  }

  @Mutation(() => ChangeUsePayload, { description: 'Corrects a use.' })
  changeUse(
    @Arg('input', () => ChangeUseInput, { description: 'The correction.' }) input: ChangeUseInput,
    @Ctx() context: ApiContext,
    @Info() info: GraphQLResolveInfo,
  ) {
    return carryOut(context, info, asUse, (work) => changeUse(work, input));
  }
}

@Resolver(() => Item)
export class UseOfItemResolver {
  @FieldResolver(() => UseSum, { description: 'Hours and contacts on the air.' })
  use(@Root() item: object, @Info() info: GraphQLResolveInfo) {
    return loadedField(item, info);
  }

  @FieldResolver(() => OnAirUseConnection, { description: 'Uses on the air, the latest first.' })
  uses(@Root() item: object, @Args() _args: PageArgs, @Info() info: GraphQLResolveInfo) {
    return loadedField(item, info);
  }

  @FieldResolver(() => [MaintenanceRule], { description: 'What is to be done again and again.' })
  maintenance(@Root() item: object, @Info() info: GraphQLResolveInfo) {
    return loadedField(item, info);
  }
}

@Resolver(() => Component)
export class UseOfComponentResolver {
  @FieldResolver(() => Float, {
    description: 'Hours on the air, in whatever it sat at the time, as far as use is recorded.',
  })
  useHours(@Root() component: object, @Info() info: GraphQLResolveInfo) {
    return loadedField(component, info);
  }
}
