import { Field, Float, ID, Int, ObjectType } from 'type-graphql';
import { Basis } from '../../api/kit/basis.type.js';
import { describedEnum } from '../../api/kit/describedEnum.js';
import { MoneyAmount } from '../../api/kit/money.type.js';
import { RoughHours } from '../readiness/derivation.type.js';

export const StepKind = describedEnum('StepKind', 'What sort of step it is.', {
  TASK: 'Finish open tasks.',
  MEND: 'Mend something that no task is planned for.',
  CHECK: 'Make a final check that no task is planned for.',
  WHOLE_ITEM: 'Settle everything that stands against one item.',
  PURCHASE: 'Get an accessory.',
});
export type StepKind = keyof typeof StepKind;

export const RankBy = describedEnum('RankBy', 'By what steps are ranked.', {
  HOUR: 'Rigs brought on the air per hour of work.',
  MONEY: 'Rigs brought on the air per unit of money; steps without a known price come last.',
});
export type RankBy = keyof typeof RankBy;

@ObjectType({
  description: 'Something that could be done next, and what it brings.',
  simpleResolvers: true,
})
export class NextStep {
  @Field(() => Int, { description: 'Its place in the ranking, from 1.' })
  rank!: number;

  @Field(() => StepKind, { description: 'What sort of step it is.' })
  kind!: StepKind;

  @Field(() => String, { description: 'What to do, as a sentence.' })
  action!: string;

  @Field(() => Int, { description: 'Rigs more that would be ready, each looked at alone.' })
  gainAlone!: number;

  @Field(() => Int, { description: 'Rigs more that would be ready at once.' })
  gainAtOnce!: number;

  @Field(() => RoughHours, { description: 'Roughly how long it takes.' })
  roughly!: RoughHours;

  @Field(() => MoneyAmount, {
    nullable: true,
    description: 'What it may cost; null when nothing recorded tells.',
  })
  price!: MoneyAmount | null;

  @Field(() => String, {
    nullable: true,
    description: 'What the price rests on; null without one.',
  })
  priceRestsOn!: string | null;

  @Field(() => Float, { description: 'Rigs more at once per hour.' })
  atOncePerHour!: number;

  @Field(() => Float, {
    nullable: true,
    description: 'Rigs more at once per unit of the home currency; null when no price is known.',
  })
  atOncePerMoney!: number | null;

  @Field(() => [ID], { description: 'The open tasks that are finished by it.' })
  taskIds!: string[];

  @Field(() => String, { description: 'Why it stands where it stands.' })
  reason!: string;
}

@ObjectType({ description: 'What to do next, the best first.', simpleResolvers: true })
export class NextSteps {
  @Field(() => Int, { description: 'Rigs that are ready now, each looked at alone.' })
  readyAlone!: number;

  @Field(() => Int, { description: 'Rigs that are ready now at once.' })
  readyAtOnce!: number;

  @Field(() => Int, { description: 'How many steps were compared.' })
  compared!: number;

  @Field(() => Basis, { description: 'What was counted, and how.' })
  basis!: Basis;
}
