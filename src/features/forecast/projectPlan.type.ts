import { Field, Float, Int, ObjectType } from 'type-graphql';

@ObjectType({
  description: 'What the forecasts of a project take for granted, and its place in the queue.',
  simpleResolvers: true,
})
export class ProjectPlan {
  @Field(() => Int, {
    description: 'Counts changes, from 0 before anything was said; send it back with your change.',
  })
  version!: number;

  @Field(() => Int, {
    nullable: true,
    description: 'The lower, the earlier it gets its hours; null comes after all that have one.',
  })
  priority!: number | null;

  @Field(() => Float, {
    description:
      'Between the normal scores of any two tasks, 0 to 0.95: a set that is bad is bad all over. 0.2 unless said; our own choice.',
  })
  correlation!: number;

  @Field(() => String, {
    description: 'What the trials are drawn from: the inventory number of the item unless said.',
  })
  seed!: string;
}
