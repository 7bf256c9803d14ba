import { GraphQLCurrency } from 'graphql-scalars';
import { Field, ID, InputType, Int } from 'type-graphql';

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

@InputType({ description: 'A change to a price index; what is left out stays as it is.' })
export class ChangeIndexInput {
  @Field(() => ID, { description: 'The price index.' })
  id!: string;

  @Field(() => Int, { description: 'The version that you saw.' })
  version!: number;

  @Field(() => String, { nullable: true, description: 'What it measures.' })
  name?: string | null;

  @Field(() => String, { nullable: true, description: 'Who publishes it, and where.' })
  source?: string | null;

  @Field(() => Boolean, {
    nullable: true,
    description:
      'True strikes it out: it is kept, and the index loaded before it is used again, or none. False takes that back.',
  })
  isStruck?: boolean | null;
}
