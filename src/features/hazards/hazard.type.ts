import { GraphQLDateTimeISO } from 'graphql-scalars';
import { Field, Int, ObjectType } from 'type-graphql';
import { Node } from '../../api/kit/node.type.js';
import { HazardKind } from './hazardKind.js';

@ObjectType({
  implements: Node,
  description: 'Something in an item that can hurt; cleared only by a named check.',
  simpleResolvers: true,
})
export class Hazard extends Node {
  @Field(() => Int, { description: 'Counts changes; send it back with your change.' })
  version!: number;

  @Field(() => HazardKind, { description: 'What can hurt.' })
  kind!: HazardKind;

  @Field(() => String, { nullable: true, description: 'Where and how it shows; null if none.' })
  note!: string | null;

  @Field(() => GraphQLDateTimeISO, { description: 'When it was noticed.' })
  raisedAt!: string;

  @Field(() => GraphQLDateTimeISO, {
    nullable: true,
    description: 'When it was cleared; null while it stands.',
  })
  clearedAt!: string | null;

  @Field(() => String, {
    nullable: true,
    description: 'The check that cleared it, in words; null while it stands.',
  })
  clearedByCheck!: string | null;
}
