import { GraphQLLocalDate } from 'graphql-scalars';
import { Field, Float, ID, InputType, Int } from 'type-graphql';
import { MoneyInput } from '../../api/kit/money.type.js';

@InputType({
  description: 'The plan of a project as it is now, to be compared with when it has changed.',
})
export class KeepBaselineInput {
  @Field(() => ID, { description: 'The project; open, with one task or more.' })
  projectId!: string;

  @Field(() => GraphQLLocalDate, {
    nullable: true,
    description: 'The day from which open tasks are put on the calendar; left out: today.',
  })
  startsOn?: string | null;

  @Field(() => Float, {
    nullable: true,
    description:
      'Hours a week that are planned, above 0 and up to 168; left out: the mean of the pace really kept.',
  })
  hoursPerWeek?: number | null;

  @Field(() => MoneyInput, {
    nullable: true,
    description: 'What the project is planned to cost; left out: its ceiling, if it has one.',
  })
  budget?: MoneyInput | null;

  @Field(() => String, { nullable: true, description: 'Why it was kept.' })
  note?: string | null;
}

@InputType({ description: 'A correction of the remarks on a kept plan.' })
export class ChangeBaselineInput {
  @Field(() => ID, { description: 'The kept plan.' })
  id!: string;

  @Field(() => Int, { description: 'The version that you saw.' })
  version!: number;

  @Field(() => String, { nullable: true, description: 'New remarks; null for none.' })
  note!: string | null;
}
