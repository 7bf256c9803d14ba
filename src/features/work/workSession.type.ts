import { GraphQLDateTimeISO } from 'graphql-scalars';
import { Field, Int, ObjectType } from 'type-graphql';
import { connectionOf } from '../../api/kit/connectionOf.js';
import { Node } from '../../api/kit/node.type.js';

@ObjectType({
  implements: Node,
  description: 'Time at the bench. A session without an end is a running timer.',
  simpleResolvers: true,
})
export class WorkSession extends Node {
  @Field(() => Int, { description: 'Counts changes; send it back with your correction.' })
  version!: number;

  @Field(() => GraphQLDateTimeISO, { description: 'When it began.' })
  startedAt!: string;

  @Field(() => GraphQLDateTimeISO, {
    nullable: true,
    description: 'When it ended; null while the timer runs.',
  })
  endedAt!: string | null;

  @Field(() => String, {
    description: 'IANA time zone of the bench: it decides the day and month the time falls in.',
  })
  zone!: string;

  @Field(() => String, { nullable: true, description: 'Remarks; null if none.' })
  note!: string | null;

  @Field(() => GraphQLDateTimeISO, { description: 'When it was first written down.' })
  recordedAt!: string;

  @Field(() => GraphQLDateTimeISO, { description: 'When it was last changed.' })
  changedAt!: string;
}

@ObjectType('WorkBreak', {
  implements: Node,
  description: 'Time within a session that was not work.',
  simpleResolvers: true,
})
export class WorkBreakType extends Node {
  @Field(() => GraphQLDateTimeISO, { description: 'When the break began.' })
  startedAt!: string;

  @Field(() => GraphQLDateTimeISO, {
    nullable: true,
    description: 'When it ended; null while it lasts.',
  })
  endedAt!: string | null;
}

@ObjectType({
  description:
    'Another session of the same person that claims some of the same time. It is counted once, for the session that began first.',
  simpleResolvers: true,
})
export class SessionOverlap {
  @Field(() => Int, { description: 'Seconds that both claim, net of breaks.' })
  seconds!: number;
}

export const WorkSessionConnection = connectionOf(
  'WorkSession',
  () => WorkSession,
  'work sessions',
);
