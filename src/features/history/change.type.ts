import { GraphQLDateTimeISO } from 'graphql-scalars';
import { Field, ObjectType } from 'type-graphql';
import { connectionOf } from '../../api/kit/connectionOf.js';
import { Node } from '../../api/kit/node.type.js';

@ObjectType({
  implements: Node,
  description: 'One change of a record.',
  simpleResolvers: true,
})
export class Change extends Node {
  @Field(() => String, { description: 'What was done: createRig, moveItem.' })
  action!: string;

  @Field(() => GraphQLDateTimeISO, { description: 'When.' })
  at!: string;
}

export const ChangeConnection = connectionOf('Change', () => Change, 'changes');
