import { GraphQLCurrency, GraphQLLocalDate } from 'graphql-scalars';
import { Field, InputType, Int } from 'type-graphql';
import { DecimalScalar } from '../../api/kit/scalars.js';

@InputType({ description: 'The rate between two currencies on a day; one a day and direction.' })
export class SetRateInput {
  @Field(() => Int, {
    nullable: true,
    description:
      'The version that you saw, to replace the rate of that day; left out for a new one.',
  })
  version?: number | null;

  @Field(() => GraphQLCurrency, { description: 'The currency of which it is one unit.' })
  fromCurrency!: string;

  @Field(() => GraphQLCurrency, { description: 'The currency of `rate`.' })
  toCurrency!: string;

  @Field(() => GraphQLLocalDate, { description: 'The day for which it holds.' })
  ratedOn!: string;

  @Field(() => DecimalScalar, {
    description: 'Units of `toCurrency` for one unit of `fromCurrency`: "1.1825".',
  })
  rate!: string;

  @Field(() => String, { description: 'Who says so: a bank, a bulletin.' })
  source!: string;

  @Field(() => Boolean, {
    nullable: true,
    description: 'True: it was written down by mistake and is used no longer.',
  })
  isStruck?: boolean | null;
}

@InputType({ description: 'Many rates at once, as text in CSV (RFC 4180).' })
export class ImportRatesInput {
  @Field(() => String, {
    description:
      'With a first line `date,from,to,rate`, and one rate a line: `2026-01-05,GBP,EUR,1.1825`.',
  })
  csv!: string;

  @Field(() => String, { description: 'Who says so; for all of them.' })
  source!: string;

  @Field(() => Boolean, {
    defaultValue: false,
    description: 'Replace rates that are there with other figures; else those are refused.',
  })
  isReplacing!: boolean;
}
