import { GraphQLCurrency } from 'graphql-scalars';
import { Field, InputType } from 'type-graphql';

@InputType({ description: 'A price index, as text in CSV (RFC 4180).' })
export class ImportIndexInput {
  @Field(() => String, { description: 'What it measures.' })
  name!: string;

  @Field(() => GraphQLCurrency, { description: 'The currency whose amounts it carries on.' })
  currency!: string;

  @Field(() => String, { description: 'Who publishes it, and where.' })
  source!: string;

  @Field(() => String, {
    description:
      'With a first line `period,value`; a period is a year (2024) or a month (2024-06).',
  })
  csv!: string;
}
