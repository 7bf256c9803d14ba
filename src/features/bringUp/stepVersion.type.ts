import { GraphQLDateTimeISO } from 'graphql-scalars';
import { Field, ObjectType } from 'type-graphql';
import { DecimalScalar } from '../../api/kit/scalars.js';
import { StepOutcome } from './stepOutcome.js';

@ObjectType({ description: 'A reading as it was written down before.', simpleResolvers: true })
export class EarlierStepReading {
  @Field(() => String, { description: 'What was measured.' })
  quantity!: string;

  @Field(() => DecimalScalar, { description: 'What it said, in `unit`.' })
  value!: string;

  @Field(() => String, { description: 'Unit, UCUM.' })
  unit!: string;
}

@ObjectType({
  description: 'What a step of a bring-up said before it was put right.',
  simpleResolvers: true,
})
export class BringUpStepVersion {
  @Field(() => [Boolean], { description: 'Whether each statement was said to hold.' })
  holds!: boolean[];

  @Field(() => [EarlierStepReading], { description: 'The readings, as they were written down.' })
  readings!: EarlierStepReading[];

  @Field(() => StepOutcome, { description: 'How it had come out.' })
  outcome!: StepOutcome;

  @Field(() => GraphQLDateTimeISO, { description: 'When it was said to be done.' })
  doneAt!: string;

  @Field(() => String, { nullable: true, description: 'Remarks, as they were; null if none.' })
  note!: string | null;

  @Field(() => GraphQLDateTimeISO, { description: 'When it was put right.' })
  replacedAt!: string;

  @Field(() => String, { description: 'What was wrong with it.' })
  reason!: string;

  @Field(() => Boolean, { description: 'True: it had never been done, and was taken back.' })
  wasNeverDone!: boolean;
}
