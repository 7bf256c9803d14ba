import { GraphQLCurrency, GraphQLDateTimeISO, GraphQLLocalDate } from 'graphql-scalars';
import { Field, Int, ObjectType } from 'type-graphql';
import { Basis } from '../../api/kit/basis.type.js';
import { connectionOf } from '../../api/kit/connectionOf.js';
import { describedEnum } from '../../api/kit/describedEnum.js';
import { MoneyAmount } from '../../api/kit/money.type.js';
import { Node } from '../../api/kit/node.type.js';
import { Problem } from '../../api/kit/problem.type.js';
import { ConditionStandard } from './conditionStandard.js';
import { ValueBasis } from './valueBasis.js';

@ObjectType({
  implements: Node,
  description: 'What a set of a model, or one item, was held to be worth on a day, by somebody.',
  simpleResolvers: true,
})
export class ValueNote extends Node {
  @Field(() => Int, { description: 'Counts changes; send it back with your change.' })
  version!: number;

  @Field(() => ValueBasis, { description: 'What sort of value.' })
  basis!: ValueBasis;

  @Field(() => ConditionStandard, { description: 'The condition that it is for.' })
  standard!: ConditionStandard;

  @Field(() => GraphQLLocalDate, { description: 'The day for which it holds.' })
  valuedOn!: string;

  @Field(() => String, { description: 'Who says so.' })
  source!: string;

  @Field(() => String, { nullable: true, description: 'Remarks; null if none.' })
  note!: string | null;

  @Field(() => GraphQLDateTimeISO, {
    nullable: true,
    description: 'Since when it is struck out and no longer counts; null while it counts.',
  })
  struckAt!: string | null;
}

export const ValueNoteConnection = connectionOf('ValueNote', () => ValueNote, 'value notes');

@ObjectType({
  implements: Node,
  description: 'What the owner alone can say of an item’s worth.',
  simpleResolvers: true,
})
export class ItemOutlook extends Node {
  @Field(() => Int, { description: 'Counts changes; send it back with your change.' })
  version!: number;

  @Field(() => ConditionStandard, {
    nullable: true,
    description: 'The condition that it is in; null: taken from its projects.',
  })
  presentStandard!: ConditionStandard | null;

  @Field(() => Int, {
    nullable: true,
    description: 'Chance in a hundred that finishing reaches the standard; null: nothing is said.',
  })
  successPercent!: number | null;

  @Field(() => String, { nullable: true, description: 'Why there is a premium; null if unsaid.' })
  premiumReason!: string | null;
}

@ObjectType({
  implements: Node,
  description: 'What the owner reckons with throughout the collection.',
  simpleResolvers: true,
})
export class WorthTerms extends Node {
  @Field(() => Int, { description: 'Counts changes; 0 before anything was said.' })
  version!: number;

  @Field(() => Int, { description: 'Of a price, what selling takes, in percent.' })
  saleCostPercent!: number;

  @Field(() => Int, { description: 'Own time to take out, test and sell one part, in minutes.' })
  partEffortMinutes!: number;

  @Field(() => Int, { description: 'Of a hundred fitted parts, how many prove fit to sell.' })
  usablePartsPercent!: number;

  @Field(() => Int, { description: 'Of a hundred spares kept, how many would be needed one day.' })
  spareUsePercent!: number;
}

export const ValueHow = describedEnum('ValueHow', 'How a value at a standard came about.', {
  NOTED: 'From value notes for that standard.',
  INTERPOLATED: 'Between notes for the nearest standards below and above.',
});

@ObjectType({
  description: 'A value as an interval: eight chances in ten lie between low and high.',
  simpleResolvers: true,
})
export class ValueInterval {
  @Field(() => ConditionStandard, {
    nullable: true,
    description: 'The condition that it is for; null for the value as parts.',
  })
  standard!: ConditionStandard | null;

  @Field(() => MoneyAmount, { description: 'One chance in ten that it is less.' })
  low!: MoneyAmount;

  @Field(() => MoneyAmount, { description: 'As likely more as less.' })
  likely!: MoneyAmount;

  @Field(() => MoneyAmount, { description: 'One chance in ten that it is more.' })
  high!: MoneyAmount;

  @Field(() => ValueHow, { nullable: true, description: 'How it came about; null as parts.' })
  how!: keyof typeof ValueHow | null;

  @Field(() => Int, { description: 'How many notes of values, or prices of parts, it rests on.' })
  noteCount!: number;
}

@ObjectType({
  description: 'What an item is worth by its value notes, in the currency of the collection.',
  simpleResolvers: true,
})
export class ItemWorth {
  @Field(() => GraphQLCurrency, { description: 'The currency of every figure here.' })
  currency!: string;

  @Field(() => ConditionStandard, { description: 'The condition that it is taken to be in.' })
  presentStandard!: ConditionStandard;

  @Field(() => ValueInterval, {
    nullable: true,
    description: 'As it stands; null when no notes reach that condition.',
  })
  asItStands!: ValueInterval | null;

  @Field(() => ConditionStandard, {
    nullable: true,
    description: 'What its open project aims at; null when none is open, or it is for parts.',
  })
  targetStandard!: ConditionStandard | null;

  @Field(() => ValueInterval, {
    nullable: true,
    description: 'At the target; null when there is none or no notes reach it.',
  })
  atTarget!: ValueInterval | null;

  @Field(() => [ValueInterval], { description: 'Every standard that notes reach.' })
  byStandard!: ValueInterval[];

  @Field(() => ValueInterval, {
    nullable: true,
    description:
      'Sum of what could be harvested, less selling effort; null when no price is known.',
  })
  asParts!: ValueInterval | null;

  @Field(() => [Problem], { description: 'What keeps figures from being given; empty if nothing.' })
  problems!: Problem[];

  @Field(() => Basis, { description: 'What was counted, and how.' })
  basis!: Basis;
}
