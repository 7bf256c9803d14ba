import { GraphQLCurrency, GraphQLDateTimeISO, GraphQLLocalDate } from 'graphql-scalars';
import { Field, Int, ObjectType } from 'type-graphql';
import { Basis } from '../../api/kit/basis.type.js';
import { connectionOf } from '../../api/kit/connectionOf.js';
import { MoneyAmount } from '../../api/kit/money.type.js';
import { Node } from '../../api/kit/node.type.js';
import { Problem } from '../../api/kit/problem.type.js';
import { DecimalScalar } from '../../api/kit/scalars.js';

@ObjectType({
  implements: Node,
  description:
    'What one unit of a currency was in another on a day. Nothing is converted without one.',
  simpleResolvers: true,
})
export class ExchangeRate extends Node {
  @Field(() => Int, { description: 'Counts changes; send it back with your change.' })
  version!: number;

  @Field(() => GraphQLCurrency, { description: 'The currency of which it is one unit; ISO 4217.' })
  fromCurrency!: string;

  @Field(() => GraphQLCurrency, { description: 'The currency of `rate`; ISO 4217.' })
  toCurrency!: string;

  @Field(() => GraphQLLocalDate, { description: 'The day for which it holds.' })
  ratedOn!: string;

  @Field(() => DecimalScalar, {
    description: 'Units of `toCurrency` for one unit of `fromCurrency`, exact.',
  })
  rate!: string;

  @Field(() => String, { description: 'Who says so.' })
  source!: string;

  @Field(() => GraphQLDateTimeISO, {
    nullable: true,
    description: 'Since when it is struck out and no longer used; null while it is used.',
  })
  struckAt!: string | null;
}

export const ExchangeRateConnection = connectionOf(
  'ExchangeRate',
  () => ExchangeRate,
  'exchange rates',
);

@ObjectType({
  description: 'A sum in one currency, with every rate that was used; or why there is none.',
  simpleResolvers: true,
})
export class ConvertedSum {
  @Field(() => MoneyAmount, {
    nullable: true,
    description: 'The sum; null when a rate is missing, as `problems` then says.',
  })
  total!: MoneyAmount | null;

  @Field(() => [Problem], { description: 'Why there is no sum; empty when there is one.' })
  problems!: Problem[];

  @Field(() => Basis, { description: 'The rates used, by name, and how it was rounded.' })
  basis!: Basis;
}
