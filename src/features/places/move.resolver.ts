import type { GraphQLResolveInfo } from 'graphql';
import { Arg, Ctx, FieldResolver, Info, Mutation, Resolver, Root } from 'type-graphql';
import type { ApiContext } from '../../api/kit/apiContext.js';
import { carryOut } from '../../api/kit/carryOut.js';
import { loadedField } from '../../api/kit/loadRelations.js';
import { payloadOf } from '../../api/kit/payloadOf.js';
import { Item } from '../items/item.type.js';
import { changeMove } from './changeMove.js';
import { ChangeMoveInput, MoveItemInput } from './move.inputs.js';
import { Move } from './move.type.js';
import { moveItem } from './moveItem.js';
import { Place } from './place.type.js';

const MoveItemPayload = payloadOf('moveItem', 'item', () => Item, 'The item where it is now.');
const ChangeMovePayload = payloadOf('changeMove', 'move', () => Move, 'The move as it is now.');

@Resolver(() => Move)
export class MoveResolver {
  @FieldResolver(() => Item, { description: 'What was moved.' })
  item(@Root() move: object, @Info() info: GraphQLResolveInfo) {
    return loadedField(move, info);
  }

  @FieldResolver(() => Place, { nullable: true, description: 'Where it stood; null if unknown.' })
  fromPlace(@Root() move: object, @Info() info: GraphQLResolveInfo) {
    return loadedField(move, info);
  }

  @FieldResolver(() => Place, { nullable: true, description: 'Where it went; null if unknown.' })
  toPlace(@Root() move: object, @Info() info: GraphQLResolveInfo) {
    return loadedField(move, info);
  }

  @Mutation(() => MoveItemPayload, {
    description: 'Moves an item, and everything housed in it, to another place.',
  })
  moveItem(
    @Arg('input', () => MoveItemInput, { description: 'The move.' }) input: MoveItemInput,
    @Ctx() context: ApiContext,
    @Info() info: GraphQLResolveInfo,
  ) {
    const asItem = { field: 'item', typeName: 'Item' };
    return carryOut(context, info, asItem, (work) => moveItem(work, input));
  }

  @Mutation(() => ChangeMovePayload, { description: 'Corrects the remarks on a move.' })
  changeMove(
    @Arg('input', () => ChangeMoveInput, { description: 'The change.' }) input: ChangeMoveInput,
    @Ctx() context: ApiContext,
    @Info() info: GraphQLResolveInfo,
  ) {
    const asMove = { field: 'move', typeName: 'Move' };
    return carryOut(context, info, asMove, (work) => changeMove(work, input));
  }
}
