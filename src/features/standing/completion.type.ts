import { Field, Float, ObjectType } from 'type-graphql';
import { Basis } from '../../api/kit/basis.type.js';

@ObjectType({
  description: 'Earned value: what is done of what was planned, never the share of hours burnt.',
  simpleResolvers: true,
})
export class Completion {
  @Field(() => Float, {
    nullable: true,
    description: 'Earned hours over budgeted hours, 0 to 1; null when nothing is budgeted.',
  })
  share!: number | null;

  @Field(() => Float, { description: 'Hours planned, by the means of the estimates.' })
  budgetedHours!: number;

  @Field(() => Float, { description: 'Hours of the plan that are earned.' })
  earnedHours!: number;

  @Field(() => Basis, { description: 'What was counted, and how.' })
  basis!: Basis;
}
