import { GraphQLDateTimeISO } from 'graphql-scalars';
import { Field, Int, ObjectType } from 'type-graphql';

@ObjectType({ description: 'A break as it was recorded before.', simpleResolvers: true })
export class EarlierBreak {
  @Field(() => GraphQLDateTimeISO, { description: 'When the break began.' })
  startedAt!: string;

  @Field(() => GraphQLDateTimeISO, {
    nullable: true,
    description: 'When it ended; null while it lasted.',
  })
  endedAt!: string | null;
}

@ObjectType({
  description: 'What a session said before it was changed.',
  simpleResolvers: true,
})
export class SessionVersion {
  @Field(() => Int, { description: 'The version that it was.' })
  version!: number;

  @Field(() => GraphQLDateTimeISO, { description: 'When it said the work began.' })
  startedAt!: string;

  @Field(() => GraphQLDateTimeISO, {
    nullable: true,
    description: 'When it said the work ended; null: the timer ran.',
  })
  endedAt!: string | null;

  @Field(() => String, { description: 'IANA time zone of the bench, as it was then.' })
  zone!: string;

  @Field(() => String, { nullable: true, description: 'Remarks, as they were; null if none.' })
  note!: string | null;

  @Field(() => [EarlierBreak], { description: 'Its breaks, as they were, in order.' })
  breaks!: EarlierBreak[];

  @Field(() => GraphQLDateTimeISO, { description: 'When it was replaced.' })
  replacedAt!: string;

  @Field(() => String, { description: 'What replaced it: correctSession, stopTimer, takeBreak.' })
  replacedBy!: string;
}
