import { GraphQLCurrency, GraphQLDateTimeISO } from 'graphql-scalars';
import { Field, Float, ID, Int, ObjectType } from 'type-graphql';
import { Basis } from '../../api/kit/basis.type.js';
import { describedEnum } from '../../api/kit/describedEnum.js';
import { MoneyAmount } from '../../api/kit/money.type.js';
import { Node } from '../../api/kit/node.type.js';
import { Problem } from '../../api/kit/problem.type.js';
import { ConditionStandard } from '../worth/conditionStandard.js';
import { InquiryKind } from './inquiryKind.js';
import { Uncertainty } from './uncertainty.js';

@ObjectType({
  implements: Node,
  description: 'A way to find out more before going on: a test, an inspection, a quotation.',
  simpleResolvers: true,
})
export class Inquiry extends Node {
  @Field(() => Int, { description: 'Counts changes; send it back with your change.' })
  version!: number;

  @Field(() => InquiryKind, { description: 'How it finds out.' })
  kind!: InquiryKind;

  @Field(() => String, { description: 'What is done.' })
  description!: string;

  @Field(() => Uncertainty, { description: 'What it would settle.' })
  resolves!: Uncertainty;

  @Field(() => Int, { description: 'Own time that it takes, in minutes.' })
  minutes!: number;

  @Field(() => GraphQLDateTimeISO, { nullable: true, description: 'When it was done, if it was.' })
  doneAt!: string | null;

  @Field(() => String, { nullable: true, description: 'What it told; null if nothing is said.' })
  outcome!: string | null;

  @Field(() => GraphQLDateTimeISO, {
    nullable: true,
    description: 'Since when it is struck out and no longer counts; null while it counts.',
  })
  struckAt!: string | null;
}

export const ChoiceKind = describedEnum('ChoiceKind', 'What could be done with a set.', {
  FINISH: 'Go on, and finish it to a standard.',
  LEAVE: 'Stop, and leave it as it stands.',
  SELL: 'Sell it as it stands.',
  PART_OUT: 'Take it apart and sell the parts.',
  KEEP_FOR_SPARES: 'Keep it as a store of parts.',
});

@ObjectType({
  description: 'One choice, with what it is expected to leave from here on.',
  simpleResolvers: true,
})
export class Choice {
  @Field(() => ChoiceKind, { description: 'What is done.' })
  kind!: keyof typeof ChoiceKind;

  @Field(() => ConditionStandard, { nullable: true, description: 'To which standard; or null.' })
  standard!: ConditionStandard | null;

  @Field(() => MoneyAmount, {
    description: 'Expected worth afterwards; failing to reach a standard leaves it as it stands.',
  })
  worth!: MoneyAmount;

  @Field(() => MoneyAmount, {
    description: 'The owner’s stated premium times the chance of success; it is no price.',
  })
  premium!: MoneyAmount;

  @Field(() => MoneyAmount, { description: 'Expected cost to come, with own time if priced.' })
  costToCome!: MoneyAmount;

  @Field(() => MoneyAmount, { description: 'Worth and premium less cost to come.' })
  gain!: MoneyAmount;

  @Field(() => MoneyAmount, {
    nullable: true,
    description: 'The most that it makes sense to spend from here; null unless it is finishing.',
  })
  mostToSpend!: MoneyAmount | null;

  @Field(() => Float, {
    nullable: true,
    description: 'Chance, 0 to 1, that finishing costs more than that; null unless finishing.',
  })
  chanceOfOverspending!: number | null;
}

@ObjectType({
  description: 'Something that is not known, and the most that it is worth to know it.',
  simpleResolvers: true,
})
export class OpenQuestion {
  @Field(() => Uncertainty, { description: 'What is not known.' })
  kind!: Uncertainty;

  @Field(() => String, { description: 'Of which part or cost, in words.' })
  what!: string;

  @Field(() => MoneyAmount, {
    description: 'Expected value of knowing it for certain before choosing: pay no more for it.',
  })
  worthKnowing!: MoneyAmount;

  @Field(() => InquiryKind, { description: 'How such a thing is usually found out.' })
  usualInquiry!: InquiryKind;
}

@ObjectType({
  description: 'A recorded way to find out more, with what it is worth.',
  simpleResolvers: true,
})
export class RatedInquiry {
  @Field(() => ID, { description: 'The inquiry.' })
  inquiryId!: string;

  @Field(() => String, { description: 'What is done.' })
  description!: string;

  @Field(() => MoneyAmount, { description: 'What it costs, with own time if priced.' })
  cost!: MoneyAmount;

  @Field(() => MoneyAmount, { description: 'The most that what it settles is worth to know.' })
  worthKnowing!: MoneyAmount;

  @Field(() => MoneyAmount, { description: 'The one less the other; below zero: not worth it.' })
  netGain!: MoneyAmount;
}

@ObjectType({
  description:
    'Going on or stopping: what each choice is expected to leave, looking forward only. The tool shows the arithmetic; the person decides.',
  simpleResolvers: true,
})
export class GoingOn {
  @Field(() => GraphQLCurrency, { description: 'The currency of every figure here.' })
  currency!: string;

  @Field(() => [Choice], { description: 'What could be done, the best expectation first.' })
  choices!: Choice[];

  @Field(() => Boolean, {
    description: 'Without the stated premium another choice would have the best expectation.',
  })
  isDecidedByPremium!: boolean;

  @Field(() => MoneyAmount, {
    nullable: true,
    description: 'Stated by the owner for having it finished; null when none is stated.',
  })
  statedPremium!: MoneyAmount | null;

  @Field(() => String, { nullable: true, description: 'Why there is one, in the owner’s words.' })
  premiumReason!: string | null;

  @Field(() => MoneyAmount, {
    nullable: true,
    description: 'Spent already, and in no figure above: it is gone whatever is chosen.',
  })
  sunkCost!: MoneyAmount | null;

  @Field(() => Float, {
    nullable: true,
    description: 'Chance, 0 to 1, that money passes the project’s ceiling; null without one.',
  })
  chanceOfBreach!: number | null;

  @Field(() => [OpenQuestion], { description: 'What is not known, the most worth knowing first.' })
  questions!: OpenQuestion[];

  @Field(() => RatedInquiry, {
    nullable: true,
    description: 'The recorded inquiry that gains most after its cost; null when none gains.',
  })
  nextStep!: RatedInquiry | null;

  @Field(() => [RatedInquiry], {
    description: 'Every recorded inquiry neither done nor struck out.',
  })
  inquiries!: RatedInquiry[];

  @Field(() => String, { description: 'The answer in three sentences at the most.' })
  explanation!: string;

  @Field(() => [Problem], { description: 'What keeps figures from being given; empty if nothing.' })
  problems!: Problem[];

  @Field(() => Basis, { description: 'What was counted, and how.' })
  basis!: Basis;
}
