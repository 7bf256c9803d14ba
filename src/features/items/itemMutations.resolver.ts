import type { GraphQLResolveInfo } from 'graphql';
import { Arg, Ctx, Info, Mutation, Resolver } from 'type-graphql';
import type { ApiContext } from '../../api/kit/apiContext.js';
import { carryOut } from '../../api/kit/carryOut.js';
import { payloadOf } from '../../api/kit/payloadOf.js';
import { ChangeAccessoryInput, CreateAccessoryInput } from './accessory.inputs.js';
import { Accessory } from './accessory.type.js';
import { changeAccessory } from './changeAccessory.js';
import { changeRig } from './changeRig.js';
import { createAccessory } from './createAccessory.js';
import { createRig } from './createRig.js';
import { RetireItemInput, ReturnItemInput } from './item.inputs.js';
import { Item } from './item.type.js';
import { retireItem } from './retireItem.js';
import { returnItem } from './returnItem.js';
import { ChangeRigInput, CreateRigInput } from './rig.inputs.js';
import { Rig } from './rig.type.js';

const asRig = { field: 'rig', typeName: 'Rig' };
const asAccessory = { field: 'accessory', typeName: 'Accessory' };
const asItem = { field: 'item', typeName: 'Item' };
const asItIsNow = 'It as it is now.';
const accessory = () => Accessory;
const CreateRigPayload = payloadOf('createRig', 'rig', () => Rig, 'The new rig.');
const ChangeRigPayload = payloadOf('changeRig', 'rig', () => Rig, asItIsNow);
const CreateAccessoryPayload = payloadOf('createAccessory', 'accessory', accessory, 'The new one.');
const ChangeAccessoryPayload = payloadOf('changeAccessory', 'accessory', accessory, asItIsNow);
const RetireItemPayload = payloadOf('retireItem', 'item', () => Item, asItIsNow);
const ReturnItemPayload = payloadOf('returnItem', 'item', () => Item, asItIsNow);

@Resolver()
export class ItemMutationsResolver {
  @Mutation(() => CreateRigPayload, { description: 'Writes down a new rig.' })
  createRig(
    @Arg('input', () => CreateRigInput, { description: 'The new rig.' }) input: CreateRigInput,
    @Ctx() context: ApiContext,
    @Info() info: GraphQLResolveInfo,
  ) {
    return carryOut(context, info, asRig, (work) => createRig(work, input));
  }

  @Mutation(() => ChangeRigPayload, { description: "Changes a rig's own data." })
  changeRig(
    @Arg('input', () => ChangeRigInput, { description: 'The change.' }) input: ChangeRigInput,
    @Ctx() context: ApiContext,
    @Info() info: GraphQLResolveInfo,
  ) {
    return carryOut(context, info, asRig, (work) => changeRig(work, input));
  }

  @Mutation(() => CreateAccessoryPayload, { description: 'Writes down a new accessory.' })
  createAccessory(
    @Arg('input', () => CreateAccessoryInput, { description: 'The new accessory.' })
    input: CreateAccessoryInput,
    @Ctx() context: ApiContext,
    @Info() info: GraphQLResolveInfo,
  ) {
    return carryOut(context, info, asAccessory, (work) => createAccessory(work, input));
  }

  @Mutation(() => ChangeAccessoryPayload, { description: "Changes an accessory's own data." })
  changeAccessory(
    @Arg('input', () => ChangeAccessoryInput, { description: 'The change.' })
    input: ChangeAccessoryInput,
    @Ctx() context: ApiContext,
    @Info() info: GraphQLResolveInfo,
  ) {
    return carryOut(context, info, asAccessory, (work) => changeAccessory(work, input));
  }

  @Mutation(() => RetireItemPayload, {
    description: 'An item leaves the collection; its records stay, and what it served ends.',
  })
  retireItem(
    @Arg('input', () => RetireItemInput, { description: 'Which, and why.' })
    input: RetireItemInput,
    @Ctx() context: ApiContext,
    @Info() info: GraphQLResolveInfo,
  ) {
    return carryOut(context, info, asItem, (work) => retireItem(work, input));
  }

  @Mutation(() => ReturnItemPayload, { description: 'An item comes back into the collection.' })
  returnItem(
    @Arg('input', () => ReturnItemInput, { description: 'Which.' }) input: ReturnItemInput,
    @Ctx() context: ApiContext,
    @Info() info: GraphQLResolveInfo,
  ) {
    return carryOut(context, info, asItem, (work) => returnItem(work, input));
  }
}
