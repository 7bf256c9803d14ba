import type { GraphQLResolveInfo } from 'graphql';
import { Arg, Ctx, FieldResolver, Info, Mutation, Query, Resolver, Root } from 'type-graphql';
import type { ApiContext } from '../../api/kit/apiContext.js';
import { carryOut } from '../../api/kit/carryOut.js';
import { loadedField, loadRelations } from '../../api/kit/loadRelations.js';
import { payloadOf } from '../../api/kit/payloadOf.js';
import { Item } from '../items/item.type.js';
import { PartOrder } from '../orders/partOrder.type.js';
import { PartType } from '../parts/partType.type.js';
import { PriceEstimate } from '../prices/price.type.js';
import { Substitute } from '../substitution/substitution.type.js';
import { Task } from '../tasks/task.type.js';
import { addWant } from './addWant.js';
import { changeWant } from './changeWant.js';
import { readWants } from './openWants.reads.js';
import { AddWantInput, ChangeWantInput } from './want.inputs.js';
import { Want, WantedList } from './want.type.js';

const asWant = { field: 'want', typeName: 'Want' };
const AddWantPayload = payloadOf('addWant', 'want', () => Want, 'The new want.');
const ChangeWantPayload = payloadOf('changeWant', 'want', () => Want, 'The want as it is now.');

@Resolver(() => Want)
export class WantResolver {
  @FieldResolver(() => PartType, { nullable: true, description: 'The part type; or null.' })
  partType(@Root() want: object, @Info() info: GraphQLResolveInfo) {
    return loadedField(want, info);
  }

  @FieldResolver(() => Item, { nullable: true, description: 'The set that it is for; or null.' })
  item(@Root() want: object, @Info() info: GraphQLResolveInfo) {
    return loadedField(want, info);
  }

  @FieldResolver(() => Task, { nullable: true, description: 'The task that waits; or null.' })
  task(@Root() want: object, @Info() info: GraphQLResolveInfo) {
    return loadedField(want, info);
  }

  @FieldResolver(() => [PartOrder], { description: 'What is ordered for it and on its way.' })
  orders(@Root() want: object, @Info() info: GraphQLResolveInfo) {
    return loadedField(want, info);
  }

  @FieldResolver(() => [PartType], { description: 'Part types that will do instead.' })
  substitutes(@Root() want: object, @Info() info: GraphQLResolveInfo) {
    return loadedField(want, info);
  }

  @FieldResolver(() => [Substitute], {
    description:
      'What serves instead by the substitution graph, the best first, at most 10; named by hand: `substitutes`.',
  })
  standIns(@Root() want: object, @Info() info: GraphQLResolveInfo) {
    return loadedField(want, info);
  }

  @FieldResolver(() => [PriceEstimate], {
    description:
      'What one costs by the prices noted, a currency each, to hold the ceiling against.',
  })
  prices(@Root() want: object, @Info() info: GraphQLResolveInfo) {
    return loadedField(want, info);
  }

  @Mutation(() => AddWantPayload, { description: 'Puts something on the wanted list.' })
  addWant(
    @Arg('input', () => AddWantInput, { description: 'What is wanted.' }) input: AddWantInput,
    @Ctx() context: ApiContext,
    @Info() info: GraphQLResolveInfo,
  ) {
    return carryOut(context, info, asWant, (work) => addWant(work, input));
  }

  @Mutation(() => ChangeWantPayload, { description: 'Changes what is wanted, or gives it up.' })
  changeWant(
    @Arg('input', () => ChangeWantInput, { description: 'The change.' }) input: ChangeWantInput,
    @Ctx() context: ApiContext,
    @Info() info: GraphQLResolveInfo,
  ) {
    return carryOut(context, info, asWant, (work) => changeWant(work, input));
  }
}

@Resolver(() => WantedList)
export class WantedListResolver {
  @Query(() => WantedList, {
    description: 'Everything that is looked for, in one answer to take to a fair: up to 500 wants.',
  })
  async wantedList(@Ctx() context: ApiContext, @Info() info: GraphQLResolveInfo) {
    const open = await readWants(context.database.reader, null, context.nowMs);
    const list = { id: 'open', open, asOf: new Date(context.nowMs).toISOString() };
    await loadRelations(context, info, 'WantedList', [list]);
    return list;
  }

  @FieldResolver(() => String, {
    description: 'The list as a page of HTML for printing, complete in itself, on A4.',
  })
  html(@Root() list: object, @Info() info: GraphQLResolveInfo) {
    return loadedField(list, info);
  }

  @FieldResolver(() => [Want], { description: 'The open wants, the most urgent first.' })
  wants(@Root() list: object, @Info() info: GraphQLResolveInfo) {
    return loadedField(list, info);
  }
}
