import { GraphQLLocalDate } from 'graphql-scalars';
import { Field, ID, InputType, Int } from 'type-graphql';

@InputType({ description: 'Days on which a person is not at the bench, both ends included.' })
export class DeclareAwayInput {
  @Field(() => ID, {
    nullable: true,
    description: 'The person; left out: the owner of the collection.',
  })
  personId?: string | null;

  @Field(() => GraphQLLocalDate, { description: 'The first day away.' })
  fromOn!: string;

  @Field(() => GraphQLLocalDate, { description: 'The last day away; within a year of the first.' })
  untilOn!: string;

  @Field(() => Boolean, {
    defaultValue: false,
    description: 'Every year from then on, at the same days: a season away.',
  })
  isYearly!: boolean;

  @Field(() => String, { nullable: true, description: 'Remarks.' })
  note?: string | null;
}

@InputType({ description: 'A change of days away; what is left out stays as it is.' })
export class ChangeAwayInput {
  @Field(() => ID, { description: 'The days away.' })
  id!: string;

  @Field(() => Int, { description: 'The version that you saw.' })
  version!: number;

  @Field(() => GraphQLLocalDate, { nullable: true, description: 'The first day away.' })
  fromOn?: string;

  @Field(() => GraphQLLocalDate, { nullable: true, description: 'The last day away.' })
  untilOn?: string;

  @Field(() => Boolean, { nullable: true, description: 'Every year at the same days.' })
  isYearly?: boolean;

  @Field(() => String, { nullable: true, description: 'New remarks; null for none.' })
  note?: string | null;

  @Field(() => Boolean, { nullable: true, description: 'Take it back, or declare it again.' })
  isWithdrawn?: boolean;
}
