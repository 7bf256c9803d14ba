import { GraphQLDateTimeISO } from 'graphql-scalars';
import { Field, Float, Int, ObjectType } from 'type-graphql';
import { Basis } from '../../api/kit/basis.type.js';
import { TaskKind } from '../tasks/taskKind.js';

@ObjectType({ description: 'Bench hours spent on one kind of task.', simpleResolvers: true })
export class HoursByTaskKind {
  @Field(() => TaskKind, {
    description: 'The kind of task; OTHER holds the hours that name no task.',
  })
  taskKind!: TaskKind;

  @Field(() => Float, { description: 'Hours.' })
  hours!: number;
}

@ObjectType({ description: 'Bench hours of one calendar month.', simpleResolvers: true })
export class HoursByMonth {
  @Field(() => String, { description: "Month in the session's own zone: 2026-03." })
  month!: string;

  @Field(() => Float, { description: 'Hours.' })
  hours!: number;
}

@ObjectType({
  description:
    'Time at the bench: net of breaks; a minute of one person counts once, for the session that started first.',
  simpleResolvers: true,
})
export class HoursInvested {
  @Field(() => Float, { description: 'Hours of finished sessions, to the hundredth.' })
  hours!: number;

  @Field(() => Int, { description: 'The same in whole seconds.' })
  seconds!: number;

  @Field(() => [HoursByTaskKind], { description: 'By kind of task, most hours first.' })
  byTaskKind!: HoursByTaskKind[];

  @Field(() => [HoursByMonth], { description: 'By calendar month, oldest first.' })
  byMonth!: HoursByMonth[];

  @Field(() => Float, {
    description:
      'Hours that these sessions claim and that were counted for a session of the same person that started earlier, here or on another item.',
  })
  repeatedHours!: number;

  @Field(() => Int, { description: 'The same in whole seconds.' })
  repeatedSeconds!: number;

  @Field(() => [GraphQLDateTimeISO], {
    description: 'When each timer now running was started. Its time counts when it is stopped.',
  })
  runningSince!: string[];

  @Field(() => Basis, { description: 'What was counted, and how.' })
  basis!: Basis;
}
