import { GraphQLDateTimeISO } from 'graphql-scalars';
import { Field, Int, ObjectType } from 'type-graphql';
import { Node } from '../../api/kit/node.type.js';
import { PositionState } from './positionState.js';

@ObjectType({
  implements: Node,
  description:
    'One position of the fit-out, checked off at an inspection. The latest check counts.',
  simpleResolvers: true,
})
export class FitOutCheck extends Node {
  @Field(() => Int, { description: 'Counts changes; send it back with your change.' })
  version!: number;

  @Field(() => PositionState, { description: 'What was found there.' })
  state!: PositionState;

  @Field(() => GraphQLDateTimeISO, { description: 'When it was looked at.' })
  checkedAt!: string;

  @Field(() => String, { nullable: true, description: 'Remarks; null if none.' })
  note!: string | null;
}
