import { GraphQLDateTimeISO } from 'graphql-scalars';
import { Field, Float, Int, ObjectType } from 'type-graphql';
import { connectionOf } from '../../api/kit/connectionOf.js';
import { Node } from '../../api/kit/node.type.js';
import { EarningRuleKind } from './earningRuleKind.js';
import { EstimateDistribution } from './estimateDistribution.js';
import { TaskKind } from './taskKind.js';
import { TaskStatus } from './taskStatus.js';

@ObjectType({
  description: 'What a task may take from its start to its end, kept in whole minutes.',
  simpleResolvers: true,
})
export class TaskEstimate {
  @Field(() => Float, { description: 'Hours, if all goes well.' })
  optimisticHours!: number;

  @Field(() => Float, { description: 'Hours, most likely.' })
  likelyHours!: number;

  @Field(() => Float, { description: 'Hours, if little goes well.' })
  pessimisticHours!: number;

  @Field(() => EstimateDistribution, { description: 'How the three figures are read.' })
  distribution!: EstimateDistribution;

  @Field(() => Float, {
    description:
      'Hours to be expected: (optimistic + 4 × likely + pessimistic) / 6, the PERT mean.',
  })
  expectedHours!: number;
}

@ObjectType({
  implements: Node,
  description: 'A weighted step of a task.',
  simpleResolvers: true,
})
export class TaskStep extends Node {
  @Field(() => String, { description: 'What is done in it.' })
  title!: string;

  @Field(() => Int, { description: 'Its share of the task, relative to the other steps.' })
  weight!: number;

  @Field(() => GraphQLDateTimeISO, {
    nullable: true,
    description: 'When it was marked as done; null while it is not.',
  })
  doneAt!: string | null;
}

@ObjectType({
  implements: Node,
  description: 'A unit of work in a project, with a three-point estimate.',
  simpleResolvers: true,
})
export class Task extends Node {
  @Field(() => Int, { description: 'Counts changes; send it back with your change.' })
  version!: number;

  @Field(() => Int, { description: 'Its place in the list of its project, from 1.' })
  ordinal!: number;

  @Field(() => String, { description: 'What is to be done.' })
  title!: string;

  @Field(() => TaskKind, { description: 'What sort of work it is.' })
  kind!: TaskKind;

  @Field(() => TaskStatus, { description: 'Where it stands.' })
  status!: TaskStatus;

  @Field(() => EarningRuleKind, { description: 'How it earns its hours before it is done.' })
  rule!: EarningRuleKind;

  @Field(() => Int, {
    nullable: true,
    description: 'Stated share that is done, in percent; null if nobody stated one.',
  })
  percentComplete!: number | null;

  @Field(() => String, {
    nullable: true,
    description: 'What shows the stated percentage; null if nothing does.',
  })
  percentEvidence!: string | null;

  @Field(() => GraphQLDateTimeISO, {
    nullable: true,
    description: 'When work on it began; null if it has not.',
  })
  startedAt!: string | null;

  @Field(() => GraphQLDateTimeISO, {
    nullable: true,
    description: 'When it was finished; null while it is not.',
  })
  finishedAt!: string | null;

  @Field(() => String, { nullable: true, description: 'Remarks; null if none.' })
  note!: string | null;

  @Field(() => GraphQLDateTimeISO, { description: 'When it was first written down.' })
  recordedAt!: string;

  @Field(() => GraphQLDateTimeISO, { description: 'When it last changed.' })
  changedAt!: string;
}

export const TaskConnection = connectionOf('Task', () => Task, 'tasks');
