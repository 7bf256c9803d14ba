import { Field, Float, ObjectType } from 'type-graphql';

@ObjectType({ description: 'A figure that went into a calculation.', simpleResolvers: true })
export class CalculationInput {
  @Field(() => String, { description: 'What it is; named as the argument.' })
  name!: string;

  @Field(() => Float, { description: 'The figure, in `unit`.' })
  value!: number;

  @Field(() => String, { description: 'Unit, UCUM where it has one; 1 for a plain number.' })
  unit!: string;
}

@ObjectType({
  description:
    'How a calculated answer came about, and what to mind before it is used. Arithmetic, no permission: local codes, the licence held and qualified practice come first.',
  simpleResolvers: true,
})
export class CalculationWorking {
  @Field(() => String, { description: 'The formula.' })
  formula!: string;

  @Field(() => [CalculationInput], { description: 'What went in.' })
  inputs!: CalculationInput[];

  @Field(() => [String], { description: 'What is taken for granted.' })
  assumptions!: string[];

  @Field(() => [String], {
    description:
      'Title, edition and table; "common practice, no source" or "from memory" where it is so.',
  })
  sources!: string[];

  @Field(() => [String], { description: 'The usual cautions.' })
  cautions!: string[];
}
