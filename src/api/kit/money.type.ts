import { GraphQLCurrency, GraphQLSafeInt } from 'graphql-scalars';
import { Field, InputType, ObjectType } from 'type-graphql';
import { DecimalScalar } from './scalars.js';

@ObjectType({ description: 'An amount of money in one currency.', simpleResolvers: true })
export class MoneyAmount {
  @Field(() => DecimalScalar, { description: 'In units of the currency, exact: "12.50".' })
  amount!: string;

  @Field(() => GraphQLSafeInt, {
    description: 'The same in minor units (ISO 4217 exponent): 1250.',
  })
  minorUnits!: number;

  @Field(() => GraphQLCurrency, { description: 'ISO 4217.' })
  currency!: string;
}

@InputType({ description: 'An amount of money in one currency.' })
export class MoneyInput {
  @Field(() => DecimalScalar, {
    description: 'In units of the currency, with no more decimals than it has: "12.50".',
  })
  amount!: string;

  @Field(() => GraphQLCurrency, { description: 'ISO 4217.' })
  currency!: string;
}
