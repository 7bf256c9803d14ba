import type { GraphQLResolveInfo } from 'graphql';
import { Arg, Args, Ctx, FieldResolver, Info, Mutation, Query, Resolver, Root } from 'type-graphql';
import type { ApiContext } from '../../api/kit/apiContext.js';
import { carryOut } from '../../api/kit/carryOut.js';
import { carryOutMany } from '../../api/kit/carryOutMany.js';
import { loadedField } from '../../api/kit/loadRelations.js';
import { PageArgs } from '../../api/kit/pageArgs.js';
import { payloadOf } from '../../api/kit/payloadOf.js';
import { rootPage } from '../../api/kit/rootPage.js';
import { Item } from '../items/item.type.js';
import { PartType } from '../parts/partType.type.js';
import { Want } from '../wants/want.type.js';
import { changePartOrder } from './changePartOrder.js';
import { markOrdered } from './markOrdered.js';
import { ChangePartOrderInput, MarkOrderedInput } from './partOrder.inputs.js';
import { isOnItsWay, partOrderReads } from './partOrder.reads.js';
import { PartOrder, PartOrderConnection } from './partOrder.type.js';

const MarkOrderedPayload = payloadOf(
  'markOrdered',
  'orders',
  () => [PartOrder],
  'The orders, a line each, in the order sent; null when none was kept.',
);
const ChangePartOrderPayload = payloadOf(
  'changePartOrder',
  'order',
  () => PartOrder,
  'The order as it is now.',
);

@Resolver(() => PartOrder)
export class PartOrderResolver {
  @Query(() => PartOrderConnection, { description: 'Orders of parts, the latest last.' })
  partOrders(
    @Args() args: PageArgs,
    @Arg('isOnItsWay', () => Boolean, {
      defaultValue: true,
      description: 'True: only what has neither come nor been cancelled; false: all of them.',
    })
    onlyOpen: boolean,
    @Ctx() context: ApiContext,
    @Info() info: GraphQLResolveInfo,
  ) {
    return rootPage(context, info, args, {
      ...partOrderReads,
      from: partOrderReads.table,
      sortBy: 'part_order.ordered_on',
      where: onlyOpen ? [{ sql: isOnItsWay, parameters: [] }] : [],
    });
  }

  @FieldResolver(() => [String], { description: 'The places that it is for; empty if for none.' })
  designators(@Root() order: object): string[] {
    return JSON.parse((order as { designators: string }).designators) as string[];
  }

  @FieldResolver(() => Item, { nullable: true, description: 'The set that it is for; or null.' })
  item(@Root() order: object, @Info() info: GraphQLResolveInfo) {
    return loadedField(order, info);
  }

  @FieldResolver(() => PartType, { nullable: true, description: 'The part type; or null.' })
  partType(@Root() order: object, @Info() info: GraphQLResolveInfo) {
    return loadedField(order, info);
  }

  @FieldResolver(() => Want, { nullable: true, description: 'The want that it answers; or null.' })
  want(@Root() order: object, @Info() info: GraphQLResolveInfo) {
    return loadedField(order, info);
  }

  @Mutation(() => MarkOrderedPayload, {
    description:
      'Says what was ordered, when, where from, and by when it is expected, so that nobody orders it twice. A place or a want that is ordered for already is refused unless said so.',
  })
  markOrdered(
    @Arg('input', () => MarkOrderedInput, { description: 'The order.' }) input: MarkOrderedInput,
    @Ctx() context: ApiContext,
    @Info() info: GraphQLResolveInfo,
  ) {
    const asOrders = { field: 'orders', typeName: 'PartOrder' };
    return carryOutMany(context, info, asOrders, (work) => markOrdered(work, input));
  }

  @Mutation(() => ChangePartOrderPayload, {
    description:
      'Corrects an order, says that it came, or that it was cancelled. What came is put on the shelf by `addStock`.',
  })
  changePartOrder(
    @Arg('input', () => ChangePartOrderInput, { description: 'The change.' })
    input: ChangePartOrderInput,
    @Ctx() context: ApiContext,
    @Info() info: GraphQLResolveInfo,
  ) {
    const asOrder = { field: 'order', typeName: 'PartOrder' };
    return carryOut(context, info, asOrder, (work) => changePartOrder(work, input));
  }
}

@Resolver(() => Item)
export class PartOrdersOfItemResolver {
  @FieldResolver(() => PartOrderConnection, {
    description: 'Parts that are on their way to it, the latest order first.',
  })
  partOrders(@Root() item: object, @Args() _page: PageArgs, @Info() info: GraphQLResolveInfo) {
    return loadedField(item, info);
  }
}
