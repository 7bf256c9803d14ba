import { Field, ObjectType } from 'type-graphql';
import { connectionOf } from '../../api/kit/connectionOf.js';
import { AccessoryRole } from './accessoryRole.js';
import { Item } from './item.type.js';

@ObjectType({
  implements: Item,
  description: 'One physical thing that serves rigs.',
  simpleResolvers: true,
})
export class Accessory extends Item {
  @Field(() => AccessoryRole, { description: 'What it is for.' })
  role!: AccessoryRole;
}

export const AccessoryConnection = connectionOf('Accessory', () => Accessory, 'accessories');
