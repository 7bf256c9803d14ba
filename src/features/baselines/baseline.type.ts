import { GraphQLDateTimeISO, GraphQLLocalDate } from 'graphql-scalars';
import { Field, Int, ObjectType } from 'type-graphql';
import { Node } from '../../api/kit/node.type.js';

@ObjectType({
  implements: Node,
  description: 'A task in a kept plan.',
  simpleResolvers: true,
})
export class BaselineTask extends Node {
  @Field(() => Int, { description: 'Its place in the plan, from 1.' })
  ordinal!: number;

  @Field(() => GraphQLLocalDate, { description: 'The day on which it was to be begun.' })
  plannedStartOn!: string;

  @Field(() => GraphQLLocalDate, { description: 'The day on which it was to be done.' })
  plannedFinishOn!: string;
}

@ObjectType({
  implements: Node,
  description: 'A project’s plan as it was on a day, kept when the plan changes.',
  simpleResolvers: true,
})
export class Baseline extends Node {
  @Field(() => Int, { description: 'Counts changes; send it back with your change.' })
  version!: number;

  @Field(() => GraphQLDateTimeISO, { description: 'When it was kept.' })
  keptAt!: string;

  @Field(() => GraphQLLocalDate, { description: 'The day from which open tasks were planned.' })
  startsOn!: string;

  @Field(() => String, { nullable: true, description: 'Why it was kept; null if not said.' })
  note!: string | null;
}
