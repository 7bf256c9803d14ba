import { GraphQLDateTimeISO } from 'graphql-scalars';
import { Field, Float, Int, ObjectType } from 'type-graphql';
import { Node } from '../../api/kit/node.type.js';
import { HazardKind } from '../hazards/hazardKind.js';
import { ItemKind } from '../items/itemKind.js';
import { EarningRuleKind } from '../tasks/earningRuleKind.js';
import { TaskKind } from '../tasks/taskKind.js';

@ObjectType({ description: 'A weighted step of a task in a template.', simpleResolvers: true })
export class TemplateStep {
  @Field(() => String, { description: 'What is done in it.' })
  title!: string;

  @Field(() => Int, { description: 'Its share of the task, relative to the other steps.' })
  weight!: number;
}

@ObjectType({
  description: 'What a task took before: your finished tasks of the same title and kind.',
  simpleResolvers: true,
})
export class TemplateTaskHistory {
  @Field(() => Int, { description: 'How many finished tasks there are.' })
  tasks!: number;

  @Field(() => Float, { description: 'Hours that the shortest took.' })
  leastHours!: number;

  @Field(() => Float, { description: 'The median of the hours that they took.' })
  medianHours!: number;

  @Field(() => Float, { description: 'Hours that the longest took.' })
  mostHours!: number;
}

@ObjectType('TemplateTask', { description: 'A task of a template.', simpleResolvers: true })
export class TemplateTaskType {
  @Field(() => Int, { description: 'Its place in the template, from 0.' })
  position!: number;

  @Field(() => String, { description: 'What is to be done.' })
  title!: string;

  @Field(() => TaskKind, { description: 'What sort of work it is.' })
  kind!: TaskKind;

  @Field(() => Float, { description: 'Hours, if all goes well.' })
  optimisticHours!: number;

  @Field(() => Float, { description: 'Hours, most likely.' })
  likelyHours!: number;

  @Field(() => Float, { description: 'Hours, if little goes well.' })
  pessimisticHours!: number;

  @Field(() => EarningRuleKind, { description: 'How it earns its hours before it is done.' })
  rule!: EarningRuleKind;

  @Field(() => [TemplateStep], { description: 'Its weighted steps, in order.' })
  steps!: TemplateStep[];

  @Field(() => [Int], { description: 'Positions of the tasks that come before it.' })
  predecessorPositions!: number[];

  @Field(() => [HazardKind], { description: 'What can hurt while doing it.' })
  hazardKinds!: HazardKind[];

  @Field(() => String, { nullable: true, description: 'Remarks; null if none.' })
  note!: string | null;

  @Field(() => TemplateTaskHistory, {
    nullable: true,
    description: 'What it took before, which `applyTaskTemplate` goes by; null if never done.',
  })
  history!: TemplateTaskHistory | null;
}

@ObjectType('TaskTemplate', {
  implements: Node,
  description: 'A checklist of tasks for a kind of set or a kind of job.',
  simpleResolvers: true,
})
export class TaskTemplate extends Node {
  @Field(() => Int, {
    nullable: true,
    description:
      'Counts changes; send it back with your change. Null for one that comes with the program: make your own from it to change it.',
  })
  version!: number | null;

  @Field(() => Boolean, { description: 'It comes with the program, as a file in seed/templates.' })
  isShipped!: boolean;

  @Field(() => String, { description: 'What it is called.' })
  title!: string;

  @Field(() => String, { nullable: true, description: 'What it is for; null if not said.' })
  description!: string | null;

  @Field(() => ItemKind, { nullable: true, description: 'What it suits; null for both.' })
  itemKind!: ItemKind | null;

  @Field(() => GraphQLDateTimeISO, {
    nullable: true,
    description: 'When it was put away; null while it is offered.',
  })
  retiredAt!: string | null;
}
