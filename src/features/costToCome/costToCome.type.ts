import { GraphQLCurrency, GraphQLDateTimeISO, GraphQLLocalDate } from 'graphql-scalars';
import { Field, Float, ID, Int, ObjectType } from 'type-graphql';
import { Basis } from '../../api/kit/basis.type.js';
import { MoneyAmount } from '../../api/kit/money.type.js';
import { Node } from '../../api/kit/node.type.js';
import { Problem } from '../../api/kit/problem.type.js';
import { ConditionStandard } from '../worth/conditionStandard.js';
import { PlannedCostKind } from './plannedCostKind.js';

@ObjectType({
  implements: Node,
  description: 'A cost that a project will have, beside parts with noted prices.',
  simpleResolvers: true,
})
export class PlannedCost extends Node {
  @Field(() => Int, { description: 'Counts changes; send it back with your change.' })
  version!: number;

  @Field(() => PlannedCostKind, { description: 'What sort of cost.' })
  kind!: PlannedCostKind;

  @Field(() => String, { description: 'What for.' })
  description!: string;

  @Field(() => ConditionStandard, {
    nullable: true,
    description: 'The least standard that needs it; null: every standard does.',
  })
  neededFrom!: ConditionStandard | null;

  @Field(() => GraphQLDateTimeISO, {
    nullable: true,
    description: 'Since when it is spent or not needed; null while it is to come.',
  })
  settledAt!: string | null;

  @Field(() => String, { nullable: true, description: 'Remarks; null if none.' })
  note!: string | null;
}

@ObjectType({ description: 'Money to come, as trials give it.', simpleResolvers: true })
export class MoneyForecast {
  @Field(() => MoneyAmount, { description: 'Mean of the trials.' })
  expected!: MoneyAmount;

  @Field(() => MoneyAmount, { description: 'As likely to take less as more.' })
  p50!: MoneyAmount;

  @Field(() => MoneyAmount, { description: 'Four times out of five it takes no more.' })
  p80!: MoneyAmount;

  @Field(() => MoneyAmount, { description: 'Nineteen times out of twenty it takes no more.' })
  p95!: MoneyAmount;
}

@ObjectType({ description: 'One thing that money will go to.', simpleResolvers: true })
export class CostLineToCome {
  @Field(() => PlannedCostKind, { description: 'What sort of cost.' })
  kind!: PlannedCostKind;

  @Field(() => String, { description: 'What it is for: a part type, a service.' })
  what!: string;

  @Field(() => Int, { description: 'How many, not counting those in hand.' })
  count!: number;

  @Field(() => MoneyAmount, { description: 'As likely to take less as more, for all of them.' })
  p50!: MoneyAmount;

  @Field(() => MoneyAmount, { description: 'Four times out of five no more, for all of them.' })
  p80!: MoneyAmount;

  @Field(() => Int, {
    nullable: true,
    description: 'How many price notes it rests on; null for a planned cost.',
  })
  noteCount!: number | null;

  @Field(() => GraphQLLocalDate, {
    nullable: true,
    description: 'The newest of these notes; null for a planned cost.',
  })
  newestNoteOn!: string | null;
}

@ObjectType({ description: 'What is needed and nothing says the price of.', simpleResolvers: true })
export class UnpricedNeed {
  @Field(() => String, { description: 'What it is.' })
  what!: string;

  @Field(() => Int, { description: 'How many.' })
  count!: number;
}

@ObjectType({
  description:
    'What a project will still cost, as a distribution in the currency of the collection.',
  simpleResolvers: true,
})
export class CostToCome {
  @Field(() => ID, { description: 'The project’s own id, for the page that shows it.' })
  projectId!: string;

  @Field(() => GraphQLCurrency, { description: 'The currency of every figure here.' })
  currency!: string;

  @Field(() => MoneyForecast, {
    nullable: true,
    description: 'Money; own time is not in it. Null while a rate is missing.',
  })
  money!: MoneyForecast | null;

  @Field(() => MoneyForecast, {
    nullable: true,
    description: 'Money and own time at the owner’s rate; null where own time has no price.',
  })
  withOwnTime!: MoneyForecast | null;

  @Field(() => [CostLineToCome], { description: 'What it is made of.' })
  lines!: CostLineToCome[];

  @Field(() => [UnpricedNeed], { description: 'Needed, and in no figure: no price is known.' })
  unpriced!: UnpricedNeed[];

  @Field(() => MoneyAmount, {
    nullable: true,
    description: 'Spent on the project so far; null while a rate is missing.',
  })
  spentSoFar!: MoneyAmount | null;

  @Field(() => MoneyAmount, {
    nullable: true,
    description: 'What the ceiling leaves of money from here; null without a ceiling or a rate.',
  })
  headroom!: MoneyAmount | null;

  @Field(() => Float, {
    nullable: true,
    description: 'Chance, 0 to 1, that money passes the ceiling; null without a ceiling or a rate.',
  })
  chanceOfBreach!: number | null;

  @Field(() => [Problem], { description: 'What keeps figures from being given; empty if nothing.' })
  problems!: Problem[];

  @Field(() => Basis, { description: 'What was counted, and how.' })
  basis!: Basis;
}
