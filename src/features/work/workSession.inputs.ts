import { GraphQLDateTimeISO, GraphQLTimeZone } from 'graphql-scalars';
import { Field, ID, InputType, Int } from 'type-graphql';

@InputType({ description: 'A break within a session.' })
export class BreakInput {
  @Field(() => GraphQLDateTimeISO, { description: 'When it began.' })
  startedAt!: Date;

  @Field(() => GraphQLDateTimeISO, {
    nullable: true,
    description: 'When it ended; left out only while it lasts.',
  })
  endedAt?: Date | null;
}

@InputType({ description: 'A session that is over, written down afterwards.' })
export class RecordSessionInput {
  @Field(() => ID, {
    nullable: true,
    description: 'Who worked; the owner of the collection if left out.',
  })
  personId?: string | null;

  @Field(() => ID, {
    nullable: true,
    description: 'The rig or accessory; may be left out where a task is named.',
  })
  itemId?: string | null;

  @Field(() => ID, {
    nullable: true,
    description: 'The task; left out for time on the item as a whole.',
  })
  taskId?: string | null;

  @Field(() => GraphQLDateTimeISO, { description: 'When it began.' })
  startedAt!: Date;

  @Field(() => GraphQLDateTimeISO, { description: 'When it ended.' })
  endedAt!: Date;

  @Field(() => GraphQLTimeZone, {
    nullable: true,
    description: "IANA zone of the bench; the collection's if left out.",
  })
  zone?: string | null;

  @Field(() => [BreakInput], { nullable: true, description: 'Breaks in it.' })
  breaks?: BreakInput[] | null;

  @Field(() => String, { nullable: true, description: 'Remarks.' })
  note?: string | null;

  @Field(() => Boolean, {
    defaultValue: false,
    description: 'It really lasted more than 24 hours; more than 7 days is refused in any case.',
  })
  isLongSessionMeant!: boolean;
}

@InputType({
  description:
    'A correction of a session; what is left out stays as it is. The history keeps what it was.',
})
export class CorrectSessionInput {
  @Field(() => ID, { description: 'The session.' })
  id!: string;

  @Field(() => Int, { description: 'The version that you saw.' })
  version!: number;

  @Field(() => ID, { nullable: true, description: 'Who worked.' })
  personId?: string | null;

  @Field(() => ID, {
    nullable: true,
    description: 'The rig or accessory; without a task the time is on the item as a whole.',
  })
  itemId?: string | null;

  @Field(() => ID, { nullable: true, description: 'The task, and with it the item.' })
  taskId?: string | null;

  @Field(() => GraphQLDateTimeISO, { nullable: true, description: 'When it began.' })
  startedAt?: Date | null;

  @Field(() => GraphQLDateTimeISO, {
    nullable: true,
    description: 'When it ended. A running timer is ended by `stopTimer`.',
  })
  endedAt?: Date | null;

  @Field(() => GraphQLTimeZone, { nullable: true, description: 'IANA zone of the bench.' })
  zone?: string | null;

  @Field(() => [BreakInput], { nullable: true, description: 'All its breaks.' })
  breaks?: BreakInput[] | null;

  @Field(() => String, { nullable: true, description: 'New remarks; null for none.' })
  note?: string | null;

  @Field(() => Boolean, {
    defaultValue: false,
    description: 'It really lasted more than 24 hours; more than 7 days is refused in any case.',
  })
  isLongSessionMeant!: boolean;
}
