import { GraphQLDateTimeISO } from 'graphql-scalars';
import { Field, ObjectType } from 'type-graphql';
import { Node } from '../../api/kit/node.type.js';

@ObjectType({
  implements: Node,
  description: 'A hazard that was not cleared when a session began.',
  simpleResolvers: true,
})
export class SessionHazard extends Node {
  @Field(() => Boolean, {
    description:
      'The answer that began the session put it before the person; false: it was not asked for.',
  })
  isShown!: boolean;

  @Field(() => GraphQLDateTimeISO, { description: 'When that was.' })
  recordedAt!: string;
}
