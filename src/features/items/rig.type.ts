import { ObjectType } from 'type-graphql';
import { connectionOf } from '../../api/kit/connectionOf.js';
import { Item } from './item.type.js';

@ObjectType({
  implements: Item,
  description: 'One physical transmitter, receiver or transceiver.',
  simpleResolvers: true,
})
export class Rig extends Item {}

export const RigConnection = connectionOf('Rig', () => Rig, 'rigs');
