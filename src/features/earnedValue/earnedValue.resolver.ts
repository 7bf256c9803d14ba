import type { GraphQLResolveInfo } from 'graphql';
import { Arg, FieldResolver, ID, Info, Resolver, Root } from 'type-graphql';
import { loadedField } from '../../api/kit/loadRelations.js';
import { Baseline } from '../baselines/baseline.type.js';
import { Project } from '../projects/project.type.js';
import { Task } from '../tasks/task.type.js';
import { EarnedValue, PlanBridge, PlanChange } from './earnedValue.type.js';

/** A few hundred days, each over all tasks. */
const priceOfSeries = 2000;

@Resolver(() => Project)
export class EarnedValueOfProjectResolver {
  @FieldResolver(() => EarnedValue, {
    description: 'Planned, earned and spent, in hours and money, now and over time.',
    complexity: ({ childComplexity }) => priceOfSeries + childComplexity,
  })
  earnedValue(
    @Root() project: object,
    @Arg('baselineId', () => ID, {
      nullable: true,
      description: 'A kept plan of the project to compare with; left out: the latest.',
    })
    _baselineId: string | null | undefined,
    @Info() info: GraphQLResolveInfo,
  ) {
    return loadedField(project, info);
  }
}

@Resolver(() => EarnedValue)
export class EarnedValueResolver {
  @FieldResolver(() => Baseline, {
    nullable: true,
    description: 'The kept plan that it is compared with; null without one.',
  })
  baseline(@Root() earnedValue: object, @Info() info: GraphQLResolveInfo) {
    return loadedField(earnedValue, info);
  }

  @FieldResolver(() => PlanBridge, {
    nullable: true,
    description:
      'From the kept plan to the expected whole, scope apart from overrun; null likewise.',
  })
  bridge(@Root() earnedValue: object, @Info() info: GraphQLResolveInfo) {
    return loadedField(earnedValue, info);
  }
}

@Resolver(() => PlanBridge)
export class PlanBridgeResolver {
  @FieldResolver(() => [PlanChange], { description: 'Task by task, the largest first.' })
  changes(@Root() bridge: object, @Info() info: GraphQLResolveInfo) {
    return loadedField(bridge, info);
  }
}

@Resolver(() => PlanChange)
export class PlanChangeResolver {
  @FieldResolver(() => Task, { description: 'The task.' })
  task(@Root() change: object, @Info() info: GraphQLResolveInfo) {
    return loadedField(change, info);
  }
}
