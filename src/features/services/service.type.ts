import { GraphQLDateTimeISO } from 'graphql-scalars';
import { Field, Int, ObjectType } from 'type-graphql';
import { Node } from '../../api/kit/node.type.js';
import { AccessoryRole } from '../items/accessoryRole.js';

@ObjectType({
  implements: Node,
  description: 'An accessory serves a rig in a role, from one day until another.',
  simpleResolvers: true,
})
export class Service extends Node {
  @Field(() => Int, { description: 'Counts changes; send it back with your change.' })
  version!: number;

  @Field(() => AccessoryRole, { description: 'What the accessory does for the rig.' })
  role!: AccessoryRole;

  @Field(() => Boolean, { description: 'It serves this rig only, even while others could use it.' })
  isExclusive!: boolean;

  @Field(() => GraphQLDateTimeISO, { description: 'Since when.' })
  startedAt!: string;

  @Field(() => GraphQLDateTimeISO, {
    nullable: true,
    description: 'Until when; null while it lasts.',
  })
  endedAt!: string | null;

  @Field(() => String, { nullable: true, description: 'Remarks; null if none.' })
  note!: string | null;
}
