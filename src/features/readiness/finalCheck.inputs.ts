import { GraphQLDateTimeISO } from 'graphql-scalars';
import { Field, ID, InputType, Int } from 'type-graphql';

@InputType({ description: 'A check done before a set goes on the air.' })
export class RecordFinalCheckInput {
  @Field(() => ID, { description: 'The rig or accessory.' })
  itemId!: string;

  @Field(() => String, {
    description: 'What was checked, named the same each time: the latest of a name counts.',
  })
  procedure!: string;

  @Field(() => GraphQLDateTimeISO, { nullable: true, description: 'When; now if left out.' })
  checkedAt?: Date | null;

  @Field(() => Boolean, { description: 'Whether it was passed.' })
  isPassed!: boolean;

  @Field(() => Int, { description: 'Days of 24 hours for which it holds, from 1 to 36500.' })
  validDays!: number;

  @Field(() => ID, { nullable: true, description: 'The party who did it.' })
  checkedById?: string | null;

  @Field(() => String, { nullable: true, description: 'Remarks.' })
  note?: string | null;
}

@InputType({ description: 'A correction of a final check; what is left out stays as it is.' })
export class ChangeFinalCheckInput {
  @Field(() => ID, { description: 'The final check.' })
  id!: string;

  @Field(() => Int, { description: 'The version that you saw.' })
  version!: number;

  @Field(() => String, { nullable: true, description: 'What was checked.' })
  procedure?: string;

  @Field(() => GraphQLDateTimeISO, { nullable: true, description: 'When it was done.' })
  checkedAt?: Date;

  @Field(() => Boolean, { nullable: true, description: 'Whether it was passed.' })
  isPassed?: boolean;

  @Field(() => Int, { nullable: true, description: 'Days of 24 hours for which it holds.' })
  validDays?: number;

  @Field(() => ID, { nullable: true, description: 'The party who did it; null for nobody.' })
  checkedById?: string | null;

  @Field(() => String, { nullable: true, description: 'New remarks; null for none.' })
  note?: string | null;
}
