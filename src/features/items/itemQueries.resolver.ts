import type { GraphQLResolveInfo } from 'graphql';
import { Arg, Args, Ctx, Info, Query, Resolver } from 'type-graphql';
import type { ApiContext } from '../../api/kit/apiContext.js';
import { AccessoryConnection } from './accessory.type.js';
import { Item, ItemConnection } from './item.type.js';
import { itemByNumber } from './itemByNumber.js';
import { ItemListArgs } from './itemListArgs.js';
import { itemPage } from './itemPage.js';
import { Rig, RigConnection } from './rig.type.js';

const inventoryNumberArgument = { description: "The collector's own number: R-007." };

@Resolver()
export class ItemQueriesResolver {
  @Query(() => RigConnection, { description: 'Rigs, by inventory number unless asked otherwise.' })
  rigs(@Args() args: ItemListArgs, @Ctx() context: ApiContext, @Info() info: GraphQLResolveInfo) {
    const { filter, sort = null } = args;
    return itemPage(context, info, args, { kind: 'RIG', filter, sort });
  }

  @Query(() => AccessoryConnection, {
    description: 'Accessories, by inventory number unless asked otherwise.',
  })
  accessories(
    @Args() args: ItemListArgs,
    @Ctx() context: ApiContext,
    @Info() info: GraphQLResolveInfo,
  ) {
    const { filter, sort = null } = args;
    return itemPage(context, info, args, { kind: 'ACCESSORY', filter, sort });
  }

  @Query(() => ItemConnection, {
    description: 'Rigs and accessories, by inventory number unless asked otherwise.',
  })
  items(@Args() args: ItemListArgs, @Ctx() context: ApiContext, @Info() info: GraphQLResolveInfo) {
    const { filter, sort = null } = args;
    return itemPage(context, info, args, { kind: null, filter, sort });
  }

  @Query(() => Item, {
    nullable: true,
    description: 'The rig or accessory with a number; null if there is none.',
  })
  item(
    @Arg('inventoryNumber', () => String, inventoryNumberArgument) inventoryNumber: string,
    @Ctx() context: ApiContext,
    @Info() info: GraphQLResolveInfo,
  ) {
    return itemByNumber(context, info, 'Item', inventoryNumber);
  }

  @Query(() => Rig, { nullable: true, description: 'The rig with a number; null if none.' })
  rig(
    @Arg('inventoryNumber', () => String, inventoryNumberArgument) inventoryNumber: string,
    @Ctx() context: ApiContext,
    @Info() info: GraphQLResolveInfo,
  ) {
    return itemByNumber(context, info, 'Rig', inventoryNumber);
  }
}
