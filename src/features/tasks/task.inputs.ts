import { Field, Float, ID, InputType, Int } from 'type-graphql';
import { HazardKind } from '../hazards/hazardKind.js';
import { EarningRuleKind } from './earningRuleKind.js';
import { EstimateDistribution } from './estimateDistribution.js';
import { TaskKind } from './taskKind.js';

@InputType({ description: 'What a task may take from start to end, in hours.' })
export class EstimateInput {
  @Field(() => Float, { description: 'Hours, if all goes well.' })
  optimisticHours!: number;

  @Field(() => Float, { description: 'Hours, most likely.' })
  likelyHours!: number;

  @Field(() => Float, { description: 'Hours, if little goes well; 10,000 at the most.' })
  pessimisticHours!: number;

  @Field(() => EstimateDistribution, {
    nullable: true,
    description: 'How the three figures are read; left out: as before, PERT_BETA for a new task.',
  })
  distribution?: EstimateDistribution | null;
}

@InputType({ description: 'A weighted step of a task.' })
export class TaskStepInput {
  @Field(() => ID, {
    nullable: true,
    description: 'The step, where one that is there already is kept or changed.',
  })
  id?: string | null;

  @Field(() => String, { description: 'What is done in it.' })
  title!: string;

  @Field(() => Int, { description: 'Its share, relative to the other steps; above 0.' })
  weight!: number;
}

@InputType({ description: 'A new task.' })
export class NewTaskInput {
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
    description: 'Its steps, in order; at least one for WEIGHTED_STEPS.',
  })
  steps?: TaskStepInput[] | null;

  @Field(() => [ID], {
    nullable: true,
    description: 'Tasks of the same project that must be done or dropped before it.',
  })
  predecessorIds?: string[] | null;

  @Field(() => [Int], {
    nullable: true,
    description: 'The same, for tasks of this list: their positions, from 0.',
  })
  predecessorPositions?: number[] | null;

  @Field(() => [HazardKind], { nullable: true, description: 'What can hurt while doing it.' })
  hazardKinds?: HazardKind[] | null;

  @Field(() => String, { nullable: true, description: 'Remarks.' })
  note?: string | null;
}

@InputType({ description: 'A new task of a project.' })
export class AddTaskInput {
  @Field(() => ID, { description: 'The project.' })
  projectId!: string;

  @Field(() => NewTaskInput, { description: 'The task.' })
  task!: NewTaskInput;
}

@InputType({ description: 'New tasks of one project: all are added or none.' })
export class AddTasksInput {
  @Field(() => ID, { description: 'The project.' })
  projectId!: string;

  @Field(() => [NewTaskInput], { description: 'The tasks in order, 1 to 500 of them.' })
  tasks!: NewTaskInput[];
}

@InputType({ description: 'A change of a task; what is left out stays as it is.' })
export class ChangeTaskInput {
  @Field(() => ID, { description: 'The task.' })
  id!: string;

  @Field(() => Int, { description: 'The version that you saw.' })
  version!: number;

  @Field(() => String, { nullable: true, description: 'New title.' })
  title?: string;

  @Field(() => TaskKind, { nullable: true, description: 'What sort of work it is.' })
  kind?: TaskKind;

  @Field(() => Int, { nullable: true, description: 'Its place in the list, from 1.' })
  ordinal?: number;

  @Field(() => EstimateInput, { nullable: true, description: 'What it may take.' })
  estimate?: EstimateInput;

  @Field(() => EarningRuleKind, { nullable: true, description: 'How it earns its hours.' })
  rule?: EarningRuleKind;

  @Field(() => [TaskStepInput], {
    nullable: true,
    description: 'All its steps, in order. A step that is left out goes, unless it is done.',
  })
  steps?: TaskStepInput[];

  @Field(() => [HazardKind], { nullable: true, description: 'What can hurt while doing it.' })
  hazardKinds?: HazardKind[];

  @Field(() => String, { nullable: true, description: 'New remarks; null for none.' })
  note?: string | null;
}
