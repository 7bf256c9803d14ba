import { GraphQLDateTimeISO } from 'graphql-scalars';
import { Field, Int, ObjectType } from 'type-graphql';

@ObjectType({ description: 'One sort of thing that was counted.', simpleResolvers: true })
export class CountedInput {
  @Field(() => String, { description: 'What was counted, as a plural: "finished sessions".' })
  what!: string;

  @Field(() => Int, { description: 'How many there were.' })
  count!: number;
}

@ObjectType({
  description: 'How a figure came about: what was counted, by which rule, as of when.',
  simpleResolvers: true,
})
export class Basis {
  @Field(() => String, { description: 'The rule, in a sentence or two.' })
  method!: string;

  @Field(() => [CountedInput], { description: 'What went into it.' })
  counted!: CountedInput[];

  @Field(() => [String], { description: 'What is taken for granted; empty when nothing is.' })
  assumptions!: string[];

  @Field(() => GraphQLDateTimeISO, { description: 'The moment for which it holds.' })
  asOf!: string;
}
