import { Field, Float, Int, ObjectType } from 'type-graphql';
import { Basis } from '../../api/kit/basis.type.js';

@ObjectType({
  description: 'Hours of work left: a distribution, not a number.',
  simpleResolvers: true,
})
export class RemainingWork {
  @Field(() => Float, { description: 'Mean, in hours.' })
  expectedHours!: number;

  @Field(() => Float, { description: 'As likely to take less as more, in hours.' })
  p50Hours!: number;

  @Field(() => Float, { description: 'Four times out of five it takes no more, in hours.' })
  p80Hours!: number;

  @Field(() => Float, { description: 'Nineteen times out of twenty it takes no more, in hours.' })
  p95Hours!: number;

  @Field(() => Int, { description: 'Tasks that are neither done nor dropped.' })
  openTasks!: number;

  @Field(() => Int, { description: 'Open tasks that have passed their pessimistic figure.' })
  refutedTasks!: number;

  @Field(() => Basis, { description: 'What was counted, and how.' })
  basis!: Basis;
}
