import { Field, ID, InputType, Int } from 'type-graphql';
import { HazardKind } from '../hazards/hazardKind.js';
import { ItemKind } from '../items/itemKind.js';
import { EarningRuleKind } from '../tasks/earningRuleKind.js';
import { EstimateInput, TaskStepInput } from '../tasks/task.inputs.js';
import { TaskKind } from '../tasks/taskKind.js';

@InputType({ description: 'A task of a template.' })
export class TemplateTaskInput {
  @Field(() => String, { description: 'What is to be done.' })
  title!: string;

  @Field(() => TaskKind, { defaultValue: TaskKind.OTHER, description: 'What sort of work it is.' })
  kind!: TaskKind;

  @Field(() => EstimateInput, { description: 'What it may take.' })
  estimate!: EstimateInput;

  @Field(() => EarningRuleKind, {
    defaultValue: EarningRuleKind.ZERO_HUNDRED,
    description: 'How it earns its hours before it is done.',
  })
  rule!: EarningRuleKind;

  @Field(() => [TaskStepInput], {
    nullable: true,
    description:
      'Its steps, in order; at least one for WEIGHTED_STEPS. Their ids are not looked at.',
  })
  steps?: TaskStepInput[] | null;

  @Field(() => [Int], {
    nullable: true,
    description: 'Positions, from 0, of the tasks that come before it; only earlier ones.',
  })
  predecessorPositions?: number[] | null;

  @Field(() => [HazardKind], { nullable: true, description: 'What can hurt while doing it.' })
  hazardKinds?: HazardKind[] | null;

  @Field(() => String, { nullable: true, description: 'Remarks.' })
  note?: string | null;
}

@InputType({
  description: 'A new template: from a project, from another template, or from tasks given here.',
})
export class MakeTaskTemplateInput {
  @Field(() => String, { description: 'What it is called.' })
  title!: string;

  @Field(() => String, { nullable: true, description: 'What it is for.' })
  description?: string | null;

  @Field(() => ItemKind, { nullable: true, description: 'What it suits; both if left out.' })
  itemKind?: ItemKind | null;

  @Field(() => ID, {
    nullable: true,
    description:
      'A project: its tasks, but for dropped ones, with the hours that finished ones really took.',
  })
  projectId?: string | null;

  @Field(() => ID, { nullable: true, description: 'Another template, to be copied.' })
  templateId?: string | null;

  @Field(() => [TemplateTaskInput], { nullable: true, description: 'Tasks, 1 to 200.' })
  tasks?: TemplateTaskInput[] | null;
}

@InputType({ description: 'A change of a template of your own; what is left out stays.' })
export class ChangeTaskTemplateInput {
  @Field(() => ID, { description: 'The template.' })
  id!: string;

  @Field(() => Int, { description: 'The version that you saw.' })
  version!: number;

  @Field(() => String, { nullable: true, description: 'New title.' })
  title?: string;

  @Field(() => String, { nullable: true, description: 'What it is for; null for nothing.' })
  description?: string | null;

  @Field(() => ItemKind, { nullable: true, description: 'What it suits; null for both.' })
  itemKind?: ItemKind | null;

  @Field(() => [TemplateTaskInput], { nullable: true, description: 'All its tasks, 1 to 200.' })
  tasks?: TemplateTaskInput[];

  @Field(() => Boolean, {
    nullable: true,
    description: 'True puts it away: it is no longer offered. False offers it again.',
  })
  isRetired?: boolean;
}

@InputType({ description: 'The tasks of a template, for a project.' })
export class ApplyTaskTemplateInput {
  @Field(() => ID, { description: 'The template.' })
  templateId!: string;

  @Field(() => ID, { description: 'The project, to whose list the tasks are added.' })
  projectId!: string;

  @Field(() => [Int], {
    nullable: true,
    description:
      'Positions of the tasks that are wanted; all if left out. What waited for one left out waits for what that waited for.',
  })
  positions?: number[] | null;

  @Field(() => Boolean, {
    defaultValue: true,
    description:
      'Go by what your finished tasks of the same title and kind took, where there are any.',
  })
  usesHistory!: boolean;
}
