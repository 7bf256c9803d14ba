import { GraphQLDateTimeISO } from 'graphql-scalars';
import { Field, ID, InputType, Int } from 'type-graphql';
import { DecimalScalar } from '../../api/kit/scalars.js';

const theKey = {
  description: 'A key of your own: sent again with the same content, it changes nothing.',
};

@InputType({ description: 'A bring-up that begins.' })
export class StartBringUpInput {
  @Field(() => String, theKey)
  key!: string;

  @Field(() => ID, { description: 'The rig or accessory.' })
  itemId!: string;

  @Field(() => String, { description: 'Key of the procedure: see `bringUpProcedures`.' })
  procedureKey!: string;

  @Field(() => GraphQLDateTimeISO, { nullable: true, description: 'When; now if left out.' })
  startedAt?: Date | null;

  @Field(() => ID, { nullable: true, description: 'The party who does it.' })
  startedById?: string | null;

  @Field(() => String, { nullable: true, description: 'Remarks.' })
  note?: string | null;
}

@InputType({ description: 'A reading that a step asks for.' })
export class StepReadingInput {
  @Field(() => String, { description: 'What was measured, named as in the step.' })
  quantity!: string;

  @Field(() => DecimalScalar, { description: 'What was read, in `unit`.' })
  value!: string;

  @Field(() => String, { description: 'Unit, UCUM: V, mA, MOhm.' })
  unit!: string;

  @Field(() => String, { nullable: true, description: 'The instrument.' })
  instrument?: string | null;

  @Field(() => String, { nullable: true, description: 'Where: the capacitor, the terminals.' })
  note?: string | null;
}

@InputType({ description: 'One step of a bring-up, done.' })
export class RecordBringUpStepInput {
  @Field(() => String, theKey)
  key!: string;

  @Field(() => ID, { description: 'The bring-up.' })
  bringUpId!: string;

  @Field(() => String, { description: 'Key of the step.' })
  stepKey!: string;

  @Field(() => [Boolean], {
    defaultValue: [],
    description: 'Whether each statement of the step holds, in its order.',
  })
  holds!: boolean[];

  @Field(() => [StepReadingInput], {
    defaultValue: [],
    description: 'Each quantity that the step asks for, once or several times.',
  })
  readings!: StepReadingInput[];

  @Field(() => GraphQLDateTimeISO, { nullable: true, description: 'When; now if left out.' })
  doneAt?: Date | null;

  @Field(() => ID, { nullable: true, description: 'The party who did it.' })
  doneById?: string | null;

  @Field(() => String, { nullable: true, description: 'Remarks.' })
  note?: string | null;
}

@InputType({
  description: 'A step that was written down by mistake, as it really was. What it said is kept.',
})
export class CorrectBringUpStepInput {
  @Field(() => ID, { description: 'The bring-up.' })
  bringUpId!: string;

  @Field(() => Int, { description: 'The version of the bring-up that you saw.' })
  version!: number;

  @Field(() => String, { description: 'Key of the step; of several times the latest.' })
  stepKey!: string;

  @Field(() => String, { description: 'What was wrong: "0.3 read as 3.0".' })
  reason!: string;

  @Field(() => Boolean, {
    defaultValue: false,
    description: 'True: it was never done. Then nothing else is said of it.',
  })
  wasNeverDone!: boolean;

  @Field(() => [Boolean], {
    defaultValue: [],
    description: 'Whether each statement of the step held, in its order.',
  })
  holds!: boolean[];

  @Field(() => [StepReadingInput], {
    defaultValue: [],
    description: 'All its readings, as they really were.',
  })
  readings!: StepReadingInput[];

  @Field(() => GraphQLDateTimeISO, { nullable: true, description: 'When; as before if left out.' })
  doneAt?: Date | null;

  @Field(() => ID, {
    nullable: true,
    description: 'The party who did it; as before if left out, nobody if null.',
  })
  doneById?: string | null;

  @Field(() => String, {
    nullable: true,
    description: 'Remarks; as before if left out, none if null.',
  })
  note?: string | null;
}

@InputType({ description: 'A bring-up that is given up for now.' })
export class AbandonBringUpInput {
  @Field(() => ID, { description: 'The bring-up.' })
  id!: string;

  @Field(() => Int, { description: 'The version that you saw.' })
  version!: number;

  @Field(() => String, { description: 'Why.' })
  reason!: string;
}

@InputType({ description: 'A bring-up that goes on.' })
export class ResumeBringUpInput {
  @Field(() => ID, { description: 'The bring-up.' })
  id!: string;

  @Field(() => Int, { description: 'The version that you saw.' })
  version!: number;
}
