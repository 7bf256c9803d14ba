import { GraphQLCurrency, GraphQLLocalDate } from 'graphql-scalars';
import { Field, ID, Int, ObjectType } from 'type-graphql';
import { Basis } from '../../api/kit/basis.type.js';
import { MoneyAmount } from '../../api/kit/money.type.js';
import { ConvertedSum } from '../rates/exchangeRate.type.js';

@ObjectType({
  description: 'The collection at the end of a year, or today: what it cost, what it is worth.',
  simpleResolvers: true,
})
export class YearBalance {
  @Field(() => GraphQLLocalDate, { description: 'The last day of the year, or today.' })
  day!: string;

  @Field(() => Int, { description: 'Items held that day.' })
  heldCount!: number;

  @Field(() => Int, { description: 'Of them, those that a value was known of.' })
  valuedCount!: number;

  @Field(() => ConvertedSum, { description: 'What the items held had cost by then.' })
  cost!: ConvertedSum;

  @Field(() => ConvertedSum, { description: 'What those with a value were worth by then.' })
  worth!: ConvertedSum;
}

@ObjectType({
  description: 'One month: what was spent in it, and what was held at its end.',
  simpleResolvers: true,
})
export class MonthBalance {
  @Field(() => String, { description: 'The month as ISO 8601 writes it: 2026-05.' })
  month!: string;

  @Field(() => ConvertedSum, { description: 'Lots, their extra costs and expenses of the month.' })
  spent!: ConvertedSum;

  @Field(() => ConvertedSum, {
    description: 'What the items with a value were worth at its end, or today.',
  })
  worth!: ConvertedSum;
}

@ObjectType({ description: 'What came of parting with an item.', simpleResolvers: true })
export class DisposalResult {
  @Field(() => ID, { description: 'The disposal.' })
  disposalId!: string;

  @Field(() => String, { description: 'Inventory number of the item.' })
  inventoryNumber!: string;

  @Field(() => GraphQLLocalDate, { description: 'The day it went.' })
  disposedOn!: string;

  @Field(() => MoneyAmount, {
    nullable: true,
    description: 'Its part of the price; null: no rate.',
  })
  proceeds!: MoneyAmount | null;

  @Field(() => MoneyAmount, {
    nullable: true,
    description:
      'Its part of what the disposal cost, spread by price; null while a rate is missing.',
  })
  sellingCosts!: MoneyAmount | null;

  @Field(() => MoneyAmount, {
    nullable: true,
    description: 'What it had cost altogether; null while a rate is missing.',
  })
  cost!: MoneyAmount | null;

  @Field(() => MoneyAmount, {
    nullable: true,
    description: 'Proceeds less both; below zero for a loss; null while a rate is missing.',
  })
  gain!: MoneyAmount | null;

  @Field(() => Basis, { description: 'The rates used, and why figures are missing.' })
  basis!: Basis;
}

@ObjectType({
  description: 'What the collection cost against what it is worth, and what was gained or lost.',
  simpleResolvers: true,
})
export class Books {
  @Field(() => GraphQLCurrency, { description: 'The currency of every figure here.' })
  currency!: string;

  @Field(() => [YearBalance], { description: 'Year by year, from the first cost to today.' })
  years!: YearBalance[];

  @Field(() => [MonthBalance], {
    description: 'The latest 24 months at most, in order, those without spending too.',
  })
  months!: MonthBalance[];

  @Field(() => [DisposalResult], { description: 'Items that went for good, the latest first.' })
  disposals!: DisposalResult[];

  @Field(() => Basis, { description: 'What was counted, and how.' })
  basis!: Basis;
}
