import { GraphQLDateTimeISO } from 'graphql-scalars';
import { Field, Int, ObjectType } from 'type-graphql';
import { connectionOf } from '../../api/kit/connectionOf.js';
import { Node } from '../../api/kit/node.type.js';

@ObjectType({
  implements: Node,
  description: 'Where things stand: a room, a shelf in it, a box on the shelf.',
  simpleResolvers: true,
})
export class Place extends Node {
  @Field(() => Int, { description: 'Counts changes; send it back with your change.' })
  version!: number;

  @Field(() => String, { description: 'What the place is called.' })
  name!: string;

  @Field(() => String, { nullable: true, description: 'Remarks; null if none.' })
  note!: string | null;

  @Field(() => GraphQLDateTimeISO, {
    nullable: true,
    description: 'When it went out of use; null while it is in use.',
  })
  retiredAt!: string | null;
}

export const PlaceConnection = connectionOf('Place', () => Place, 'places');
