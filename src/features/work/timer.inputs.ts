import { GraphQLDateTimeISO, GraphQLTimeZone } from 'graphql-scalars';
import { Field, ID, InputType } from 'type-graphql';

@InputType({ description: 'Work that begins now.' })
export class StartTimerInput {
  @Field(() => ID, {
    nullable: true,
    description: 'Who works; the owner of the collection if left out.',
  })
  personId?: string | null;

  @Field(() => ID, {
    nullable: true,
    description: 'The rig or accessory; may be left out where a task is named.',
  })
  itemId?: string | null;

  @Field(() => ID, {
    nullable: true,
    description: 'The task, which is then in progress; left out for the item as a whole.',
  })
  taskId?: string | null;

  @Field(() => GraphQLDateTimeISO, {
    nullable: true,
    description: 'When work began, if it was a while ago; now if left out.',
  })
  startedAt?: Date | null;

  @Field(() => GraphQLTimeZone, {
    nullable: true,
    description: "IANA zone of the bench; the collection's if left out.",
  })
  zone?: string | null;

  @Field(() => String, { nullable: true, description: 'Remarks.' })
  note?: string | null;
}

@InputType({ description: 'Whose timer is meant.' })
export class TimerInput {
  @Field(() => ID, {
    nullable: true,
    description: 'Who works; the owner of the collection if left out.',
  })
  personId?: string | null;
}

@InputType({ description: 'Whose timer is stopped, and when the work ended.' })
export class StopTimerInput extends TimerInput {
  @Field(() => GraphQLDateTimeISO, {
    nullable: true,
    description: 'When the work ended; now if left out. Needed after 16 hours.',
  })
  endedAt?: Date | null;

  @Field(() => String, { nullable: true, description: 'A remark, added to those it has.' })
  note?: string | null;
}
