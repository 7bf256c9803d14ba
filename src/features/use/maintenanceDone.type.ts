import { GraphQLDateTimeISO } from 'graphql-scalars';
import { Field, Int, ObjectType } from 'type-graphql';
import { Node } from '../../api/kit/node.type.js';

@ObjectType({
  implements: Node,
  description: 'That a rule was followed, once.',
  simpleResolvers: true,
})
export class MaintenanceDone extends Node {
  @Field(() => Int, { description: 'Counts changes; send it back with your change.' })
  version!: number;

  @Field(() => GraphQLDateTimeISO, { description: 'When it was done.' })
  doneAt!: string;

  @Field(() => GraphQLDateTimeISO, {
    nullable: true,
    description: 'Since when it counts for nothing, being a mistake; null while it counts.',
  })
  withdrawnAt!: string | null;

  @Field(() => String, { nullable: true, description: 'Remarks; null if none.' })
  note!: string | null;
}
