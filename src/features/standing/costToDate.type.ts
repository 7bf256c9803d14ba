import { GraphQLCurrency } from 'graphql-scalars';
import { Field, ObjectType } from 'type-graphql';
import { Basis } from '../../api/kit/basis.type.js';
import { MoneyAmount } from '../../api/kit/money.type.js';

@ObjectType({ description: 'Money spent in one currency.', simpleResolvers: true })
export class CurrencyCost {
  @Field(() => GraphQLCurrency, { description: 'ISO 4217.' })
  currency!: string;

  @Field(() => MoneyAmount, { description: 'Its part of the price of the lot it came in.' })
  price!: MoneyAmount;

  @Field(() => MoneyAmount, { description: "Its part of that lot's extra costs." })
  extras!: MoneyAmount;

  @Field(() => MoneyAmount, { description: 'Expenses recorded since.' })
  expenses!: MoneyAmount;

  @Field(() => MoneyAmount, { description: 'All three.' })
  total!: MoneyAmount;
}

@ObjectType({
  description: 'Money spent so far, currency by currency; nothing is converted.',
  simpleResolvers: true,
})
export class CostToDate {
  @Field(() => [CurrencyCost], { description: 'By currency code; empty when nothing is recorded.' })
  byCurrency!: CurrencyCost[];

  @Field(() => Basis, { description: 'What was counted, and how.' })
  basis!: Basis;
}
