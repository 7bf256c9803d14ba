import { GraphQLDateTimeISO } from 'graphql-scalars';
import { Field, Int, ObjectType } from 'type-graphql';
import { connectionOf } from '../../api/kit/connectionOf.js';
import { Node } from '../../api/kit/node.type.js';

@ObjectType({
  implements: Node,
  description: 'A check done before a set goes on the air; it goes stale.',
  simpleResolvers: true,
})
export class FinalCheck extends Node {
  @Field(() => Int, { description: 'Counts changes; send it back with your change.' })
  version!: number;

  @Field(() => String, { description: 'What was checked: insulation to chassis, output power.' })
  procedure!: string;

  @Field(() => GraphQLDateTimeISO, { description: 'When it was done.' })
  checkedAt!: string;

  @Field(() => Boolean, { description: 'Whether it was passed.' })
  isPassed!: boolean;

  @Field(() => Int, { description: 'Days of 24 hours for which it holds.' })
  validDays!: number;

  @Field(() => String, { nullable: true, description: 'Remarks; null if none.' })
  note!: string | null;
}

export const FinalCheckConnection = connectionOf('FinalCheck', () => FinalCheck, 'final checks');
