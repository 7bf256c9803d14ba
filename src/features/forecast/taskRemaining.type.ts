import { Field, Float, ObjectType } from 'type-graphql';
import { RemainingKind } from './projectForecast.type.js';

@ObjectType({
  description: 'Hours left on one task, given those already spent on it: a distribution.',
  simpleResolvers: true,
})
export class TaskRemaining {
  @Field(() => RemainingKind, { description: 'What the hours spent say of its estimate.' })
  kind!: keyof typeof RemainingKind;

  @Field(() => Float, { description: 'Hours spent on it so far, each minute counted once.' })
  spentHours!: number;

  @Field(() => Float, {
    description:
      'What its estimate was multiplied by, from the history of such tasks; 1 for nothing.',
  })
  multiplier!: number;

  @Field(() => Float, { description: 'Mean of what is left, in hours; 0 once done or dropped.' })
  expectedHours!: number;

  @Field(() => Float, { description: 'As likely to take less as more, in hours.' })
  p50Hours!: number;

  @Field(() => Float, {
    description: 'Four times out of five no more than this is left, in hours.',
  })
  p80Hours!: number;

  @Field(() => Float, {
    description: 'Nineteen times out of twenty no more than this is left, in hours.',
  })
  p95Hours!: number;

  @Field(() => Float, { description: 'Variance of what is left, in square hours.' })
  varianceHours!: number;
}
