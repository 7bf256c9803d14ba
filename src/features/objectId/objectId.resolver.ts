import type { GraphQLResolveInfo } from 'graphql';
import { Arg, Ctx, FieldResolver, Info, Mutation, Resolver, Root } from 'type-graphql';
import type { ApiContext } from '../../api/kit/apiContext.js';
import { carryOut } from '../../api/kit/carryOut.js';
import { loadedField } from '../../api/kit/loadRelations.js';
import { payloadOf } from '../../api/kit/payloadOf.js';
import { Item } from '../items/item.type.js';
import { identifyItem } from './identifyItem.js';
import { IdentifyItemInput } from './objectId.inputs.js';
import { ObjectIdSheet } from './objectId.type.js';

const asItem = { field: 'item', typeName: 'Item' };
const IdentifyItemPayload = payloadOf('identifyItem', 'item', () => Item, 'The item identified.');

@Resolver(() => Item)
export class ObjectIdOfItemResolver {
  @FieldResolver(() => ObjectIdSheet, {
    description: 'What tells it from every other, by the nine categories of Object ID (ICOM).',
  })
  objectId(@Root() item: object, @Info() info: GraphQLResolveInfo) {
    return loadedField(item, info);
  }

  @Mutation(() => IdentifyItemPayload, {
    description: 'Writes down what tells an item from every other, or corrects it.',
  })
  identifyItem(
    @Arg('input', () => IdentifyItemInput, { description: 'What tells it apart.' })
    input: IdentifyItemInput,
    @Ctx() context: ApiContext,
    @Info() info: GraphQLResolveInfo,
  ) {
    return carryOut(context, info, asItem, (work) => identifyItem(work, input));
  }
}
