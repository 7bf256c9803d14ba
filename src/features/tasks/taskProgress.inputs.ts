import { Field, ID, InputType, Int } from 'type-graphql';

@InputType({ description: 'All that a task waits for, from now on.' })
export class SetPredecessorsInput {
  @Field(() => ID, { description: 'The task.' })
  id!: string;

  @Field(() => Int, { description: 'The version that you saw.' })
  version!: number;

  @Field(() => [ID], { description: 'Tasks of the same project; none to wait for nothing.' })
  predecessorIds!: string[];
}

@InputType({ description: 'A task whose status is to change.' })
export class TaskStatusInput {
  @Field(() => ID, { description: 'The task.' })
  id!: string;

  @Field(() => String, { nullable: true, description: 'A remark, added to those it has.' })
  note?: string | null;
}

@InputType({ description: 'Whether a step is done.' })
export class StepMarkInput {
  @Field(() => ID, { description: 'The step.' })
  stepId!: string;

  @Field(() => Boolean, { defaultValue: true, description: 'Done, or not done after all.' })
  isDone!: boolean;
}

@InputType({ description: 'Which steps of a task are done.' })
export class MarkStepsInput {
  @Field(() => ID, { description: 'The task.' })
  taskId!: string;

  @Field(() => [StepMarkInput], { description: 'The steps that change.' })
  steps!: StepMarkInput[];
}

@InputType({ description: 'How much of a task is done, and what shows it.' })
export class StatePercentInput {
  @Field(() => ID, { description: 'A task with the rule PERCENT_WITH_EVIDENCE.' })
  id!: string;

  @Field(() => Int, { description: 'The version that you saw.' })
  version!: number;

  @Field(() => Int, { description: 'Share that is done, in percent, 0 to 100.' })
  percent!: number;

  @Field(() => String, {
    nullable: true,
    description:
      'What shows it: "11 of 14 capacitors replaced". This, a reading or a photograph is needed.',
  })
  evidence?: string | null;

  @Field(() => ID, {
    nullable: true,
    description: "A reading that shows it, of the task's item or of a part that sits or sat in it.",
  })
  readingId?: string | null;

  @Field(() => ID, {
    nullable: true,
    description:
      'A photograph that shows it: attached to the task, its project, its item, a part that sits or sat in it, or a finding of it.',
  })
  attachmentId?: string | null;
}
