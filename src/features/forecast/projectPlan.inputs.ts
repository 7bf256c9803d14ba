import { Field, Float, ID, InputType, Int } from 'type-graphql';

@InputType({
  description: 'What the forecasts of a project are to take for granted; what is left out stays.',
})
export class SetForecastAssumptionsInput {
  @Field(() => ID, { description: 'The project.' })
  projectId!: string;

  @Field(() => Int, { description: 'The version of its plan that you saw; 0 for the first time.' })
  version!: number;

  @Field(() => Float, {
    nullable: true,
    description: 'Between any two tasks, 0 (each goes its own way) to 0.95; kept in hundredths.',
  })
  correlation?: number | null;

  @Field(() => String, {
    nullable: true,
    description: 'What the trials are drawn from; null for the inventory number of the item.',
  })
  seed?: string | null;

  @Field(() => ID, {
    nullable: true,
    description: 'The person who does the work; null for the owner of the collection.',
  })
  workedById?: string | null;
}

@InputType({ description: 'A project’s place among those that wait for the same person.' })
export class SetProjectPriorityInput {
  @Field(() => ID, { description: 'The project; PLANNED or ACTIVE.' })
  projectId!: string;

  @Field(() => Int, { description: 'Its place in the queue from now on, from 1.' })
  place!: number;
}

@InputType({ description: 'A project goes before the one that now comes before it.' })
export class MoveProjectUpInput {
  @Field(() => ID, { description: 'The project; PLANNED or ACTIVE.' })
  projectId!: string;
}
