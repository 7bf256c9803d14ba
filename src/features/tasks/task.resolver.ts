import type { GraphQLResolveInfo } from 'graphql';
import { Args, FieldResolver, Info, Resolver, Root } from 'type-graphql';
import { loadedField } from '../../api/kit/loadRelations.js';
import { PageArgs } from '../../api/kit/pageArgs.js';
import { pertMoments } from '../../domain/estimates/pertMoments.js';
import { HazardKind } from '../hazards/hazardKind.js';
import { hazardGuide } from '../hazards/hazardGuide.js';
import { Project } from '../projects/project.type.js';
import { estimateOf } from './estimateOf.js';
import type { TaskEntity } from './task.entity.js';
import { Task, TaskConnection, TaskEstimate, TaskStep } from './task.type.js';

const kindsOf = (task: object): HazardKind[] =>
  JSON.parse((task as { hazardKinds: string }).hazardKinds) as HazardKind[];

@Resolver(() => Task)
export class TaskResolver {
  @FieldResolver(() => Project, { description: 'The project that it belongs to.' })
  project(@Root() task: object, @Info() info: GraphQLResolveInfo) {
    return loadedField(task, info);
  }

  @FieldResolver(() => TaskEstimate, { description: 'What it may take from start to end.' })
  estimate(@Root() task: TaskEntity) {
    const estimate = estimateOf(task);
    return { ...estimate, expectedHours: pertMoments(estimate).meanHours };
  }

  @FieldResolver(() => [HazardKind], { description: 'What can hurt while doing it.' })
  hazardKinds(@Root() task: object) {
    return kindsOf(task);
  }

  @FieldResolver(() => [String], {
    description:
      'The usual cautions for what can hurt while doing it. Local codes and licensed practice come first.',
  })
  cautions(@Root() task: object) {
    return [...new Set(kindsOf(task).flatMap((kind) => hazardGuide(kind).cautions))];
  }

  @FieldResolver(() => [TaskStep], { description: 'Its weighted steps, in order.' })
  steps(@Root() task: object, @Info() info: GraphQLResolveInfo) {
    return loadedField(task, info);
  }

  @FieldResolver(() => [Task], { description: 'Tasks that must be done or dropped before it.' })
  predecessors(@Root() task: object, @Info() info: GraphQLResolveInfo) {
    return loadedField(task, info);
  }

  @FieldResolver(() => [Task], { description: 'Tasks that wait for it.' })
  successors(@Root() task: object, @Info() info: GraphQLResolveInfo) {
    return loadedField(task, info);
  }

  @FieldResolver(() => Boolean, {
    description: 'It is open, and everything before it is done or dropped.',
  })
  isReady(@Root() task: object, @Info() info: GraphQLResolveInfo) {
    return loadedField(task, info);
  }
}

@Resolver(() => Project)
export class TasksOfProjectResolver {
  @FieldResolver(() => TaskConnection, { description: 'Its tasks, in the order of the list.' })
  tasks(@Root() project: object, @Args() _page: PageArgs, @Info() info: GraphQLResolveInfo) {
    return loadedField(project, info);
  }
}
