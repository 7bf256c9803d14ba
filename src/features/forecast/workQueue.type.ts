import { GraphQLLocalDate } from 'graphql-scalars';
import { Field, Float, Int, ObjectType } from 'type-graphql';
import { Basis } from '../../api/kit/basis.type.js';

@ObjectType({ description: 'A project that waits for a person’s hours.', simpleResolvers: true })
export class QueuedProject {
  @Field(() => Int, {
    description: 'Its place, from 1: the first gets all hours until it is done.',
  })
  place!: number;

  @Field(() => Float, { description: 'As likely to take less as more, in hours.' })
  p50Hours!: number;

  @Field(() => Float, { description: 'Four times out of five it takes no more, in hours.' })
  p80Hours!: number;

  @Field(() => GraphQLLocalDate, {
    nullable: true,
    description: 'Done by then in half of the trials; null if never, or if no pace is known.',
  })
  p50On!: string | null;

  @Field(() => GraphQLLocalDate, {
    nullable: true,
    description: 'Done by then in four of five trials; null if never, or if no pace is known.',
  })
  p80On!: string | null;
}

@ObjectType({
  description: 'What another order would do to one project’s dates.',
  simpleResolvers: true,
})
export class QueueEffect {
  @Field(() => Int, { description: 'Its place in that order, from 1.' })
  place!: number;

  @Field(() => GraphQLLocalDate, { nullable: true, description: 'As in the queue, in that order.' })
  p50On!: string | null;

  @Field(() => GraphQLLocalDate, { nullable: true, description: 'As in the queue, in that order.' })
  p80On!: string | null;

  @Field(() => Int, {
    nullable: true,
    description: 'Days by which its p50 date is later, below 0 earlier; null without both dates.',
  })
  p50DaysLater!: number | null;

  @Field(() => Int, {
    nullable: true,
    description: 'Days by which its p80 date is later, below 0 earlier; null without both dates.',
  })
  p80DaysLater!: number | null;
}

@ObjectType({
  description: 'The projects that share one person, in the order in which they get the hours.',
  simpleResolvers: true,
})
export class WorkQueue {
  @Field(() => Basis, { description: 'What was counted, and how.' })
  basis!: Basis;
}
