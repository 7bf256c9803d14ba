import { GraphQLDateTimeISO } from 'graphql-scalars';
import { Field, Int, ObjectType } from 'type-graphql';
import { Node } from '../../api/kit/node.type.js';
import { Problem } from '../../api/kit/problem.type.js';

@ObjectType({ description: 'What became of one row of a sweep.', simpleResolvers: true })
export class SweepRow {
  @Field(() => String, { description: 'The position.' })
  designator!: string;

  @Field(() => [Problem], {
    description:
      'Why no reading of it was kept; empty when they were. Mend it and send it again under a new key.',
  })
  problems!: Problem[];
}

@ObjectType({
  implements: Node,
  description: 'Readings of many positions that were taken in one go.',
  simpleResolvers: true,
})
export class Sweep extends Node {
  @Field(() => String, { description: 'The name that it was sent under.' })
  key!: string;

  @Field(() => GraphQLDateTimeISO, { description: 'When it was first sent.' })
  recordedAt!: string;

  @Field(() => Int, { description: 'How many readings were kept.' })
  readingCount!: number;

  @Field(() => Int, { description: 'How many rows were refused.' })
  refusedRowCount!: number;

  @Field(() => [String], {
    description:
      'Positions that its template named and of which no reading was kept; empty without a template.',
  })
  positionsLeft!: string[];
}
