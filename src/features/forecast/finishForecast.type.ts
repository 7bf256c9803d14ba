import { GraphQLLocalDate } from 'graphql-scalars';
import { Field, Float, ObjectType } from 'type-graphql';
import { Basis } from '../../api/kit/basis.type.js';

@ObjectType({
  description: 'When the hours left will be done, if this project came first.',
  simpleResolvers: true,
})
export class FinishForecast {
  @Field(() => GraphQLLocalDate, {
    nullable: true,
    description: 'Done by then in half of the trials; null if never within twenty years.',
  })
  p50On!: string | null;

  @Field(() => GraphQLLocalDate, {
    nullable: true,
    description: 'Done by then in four of five trials; null if never within twenty years.',
  })
  p80On!: string | null;

  @Field(() => GraphQLLocalDate, {
    nullable: true,
    description: 'Done by then in nineteen of twenty trials; null if never within twenty years.',
  })
  p95On!: string | null;

  @Field(() => Basis, { description: 'What was counted, and how.' })
  basis!: Basis;
}

@ObjectType({
  description: 'How far a project may be on a day to come, over all trials of its forecast.',
  simpleResolvers: true,
})
export class WeekAhead {
  @Field(() => GraphQLLocalDate, {
    description: 'At the end of this day; the first is today, before any further work.',
  })
  on!: string;

  @Field(() => Float, { description: 'Share of the trials, 0 to 1, that are done by then.' })
  finishedShare!: number;

  @Field(() => Float, {
    description:
      'Share of the hours left today, 0 to 1, that four of five trials have done by then at least; 1 from the p80 date on.',
  })
  p80DoneShare!: number;

  @Field(() => Float, {
    description: 'The same for half of the trials; 1 from the p50 date on.',
  })
  p50DoneShare!: number;

  @Field(() => Float, { description: 'The same for one of five trials.' })
  p20DoneShare!: number;
}
