import { GraphQLDateTimeISO } from 'graphql-scalars';
import { Field, Int, ObjectType } from 'type-graphql';
import { connectionOf } from '../../api/kit/connectionOf.js';
import { describedEnum } from '../../api/kit/describedEnum.js';
import { Node } from '../../api/kit/node.type.js';
import { VerdictWord, HeldLimit } from '../readings/verdict.type.js';
import { BringUpStatus } from './bringUpStatus.js';
import { BringUpProcedure, BringUpStepPlan } from './procedure.type.js';
import { StepOutcome } from './stepOutcome.js';
import { BringUpStepVersion } from './stepVersion.type.js';

export const PowerAnswer = describedEnum(
  'PowerAnswer',
  'What is recorded on applying power. None of the words is a permission.',
  {
    DO_NOT_CONNECT: 'A hazard is not cleared or a finding forbids use, whatever else is true.',
    GATES_FIRST: 'Gates before the first step with power are not passed.',
    NOTHING_RECORDED_AGAINST: 'Nothing recorded stands against it; who is at the bench decides.',
  },
);
export type PowerAnswer = keyof typeof PowerAnswer;

@ObjectType({ description: 'What is recorded on applying power to a set.', simpleResolvers: true })
export class PowerStanding {
  @Field(() => PowerAnswer, { description: 'The answer.' })
  answer!: PowerAnswer;

  @Field(() => [String], { description: 'Why, with what would settle it; empty if nothing.' })
  reasons!: string[];
}

@ObjectType({ description: 'A reading of a step, held against its limits.', simpleResolvers: true })
export class StepVerdict {
  @Field(() => String, { description: 'What was measured.' })
  quantity!: string;

  @Field(() => VerdictWord, { description: 'What the limits say of it.' })
  word!: VerdictWord;

  @Field(() => HeldLimit, { nullable: true, description: 'Against what; null without a limit.' })
  limit!: HeldLimit | null;
}

@ObjectType({
  description: 'A step of a bring-up as it stands: what is asked, and the latest recorded of it.',
  simpleResolvers: true,
})
export class BringUpStep {
  @Field(() => BringUpStepPlan, { description: 'What the procedure asks.' })
  plan!: BringUpStepPlan;

  @Field(() => StepOutcome, { description: 'How it came out; computed from limits.' })
  outcome!: StepOutcome;

  @Field(() => [Boolean], { description: 'Whether each statement held; empty if not done.' })
  holds!: boolean[];

  @Field(() => [StepVerdict], { description: 'The verdict on each reading.' })
  verdicts!: StepVerdict[];

  @Field(() => GraphQLDateTimeISO, { nullable: true, description: 'When; null if not done.' })
  doneAt!: string | null;

  @Field(() => String, { nullable: true, description: 'Remarks; null if none.' })
  note!: string | null;

  @Field(() => [BringUpStepVersion], {
    description: 'What was written down by mistake and put right since, oldest first.',
  })
  earlierVersions!: BringUpStepVersion[];
}

@ObjectType({
  implements: Node,
  description: 'A bring-up procedure carried out on an item.',
  simpleResolvers: true,
})
export class BringUp extends Node {
  @Field(() => Int, { description: 'Counts changes; send it back with your change.' })
  version!: number;

  @Field(() => BringUpStatus, { description: 'How it stands.' })
  status!: BringUpStatus;

  @Field(() => BringUpProcedure, { description: 'The procedure as it read when it began.' })
  procedure!: BringUpProcedure;

  @Field(() => GraphQLDateTimeISO, { description: 'When it began.' })
  startedAt!: string;

  @Field(() => GraphQLDateTimeISO, {
    nullable: true,
    description: 'When it was passed or given up; null otherwise.',
  })
  endedAt!: string | null;

  @Field(() => String, {
    nullable: true,
    description: 'Why it stopped or was given up; null otherwise.',
  })
  reason!: string | null;

  @Field(() => String, { nullable: true, description: 'Remarks; null if none.' })
  note!: string | null;
}

export const BringUpConnection = connectionOf('BringUp', () => BringUp, 'bring-ups');
