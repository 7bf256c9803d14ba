import type { GraphQLResolveInfo } from 'graphql';
import { Arg, Ctx, FieldResolver, Info, Mutation, Resolver, Root } from 'type-graphql';
import type { ApiContext } from '../../api/kit/apiContext.js';
import { carryOut } from '../../api/kit/carryOut.js';
import { loadedField } from '../../api/kit/loadRelations.js';
import { payloadOf } from '../../api/kit/payloadOf.js';
import { Party } from '../parties/party.type.js';
import { Project } from '../projects/project.type.js';
import { Task } from '../tasks/task.type.js';
import { priceOfTrials } from './priceOfTrials.js';
import { ProjectForecast, TaskForecast, TornadoBar } from './projectForecast.type.js';
import {
  MoveProjectUpInput,
  SetForecastAssumptionsInput,
  SetProjectPriorityInput,
} from './projectPlan.inputs.js';
import { ProjectPlan } from './projectPlan.type.js';
import { setForecastAssumptions } from './setForecastAssumptions.js';
import { moveProjectUp, setProjectPriority } from './setProjectPriority.js';

const asProject = { field: 'project', typeName: 'Project' };
const payload = (mutation: string) =>
  payloadOf(mutation, 'project', () => Project, 'The project as it is now.');
const SetForecastAssumptionsPayload = payload('setForecastAssumptions');
const SetProjectPriorityPayload = payload('setProjectPriority');
const MoveProjectUpPayload = payload('moveProjectUp');

@Resolver(() => Project)
export class ForecastOfProjectResolver {
  @FieldResolver(() => ProjectForecast, {
    description:
      'The whole project by 10,000 seeded trials. It is dear: ask for it on one project, or a few.',
    complexity: priceOfTrials,
  })
  forecast(
    @Root() project: object,
    @Arg('isCalibrated', () => Boolean, {
      defaultValue: true,
      description: 'Multiply estimates by what the finished tasks say of such estimates.',
    })
    _isCalibrated: boolean,
    @Info() info: GraphQLResolveInfo,
  ) {
    return loadedField(project, info);
  }

  @FieldResolver(() => ProjectPlan, {
    description: 'What its forecasts take for granted, and its place in the queue.',
  })
  plan(@Root() project: object, @Info() info: GraphQLResolveInfo) {
    return loadedField(project, info);
  }

  @Mutation(() => SetForecastAssumptionsPayload, {
    description: 'Says what the forecasts of a project take for granted, and who does the work.',
  })
  setForecastAssumptions(
    @Arg('input', () => SetForecastAssumptionsInput, { description: 'What is to be said.' })
    input: SetForecastAssumptionsInput,
    @Ctx() context: ApiContext,
    @Info() info: GraphQLResolveInfo,
  ) {
    return carryOut(context, info, asProject, (work) => setForecastAssumptions(work, input));
  }

  @Mutation(() => SetProjectPriorityPayload, {
    description: 'Gives a project a place among those that wait for the same person.',
  })
  setProjectPriority(
    @Arg('input', () => SetProjectPriorityInput, { description: 'The place.' })
    input: SetProjectPriorityInput,
    @Ctx() context: ApiContext,
    @Info() info: GraphQLResolveInfo,
  ) {
    return carryOut(context, info, asProject, (work) => setProjectPriority(work, input));
  }

  @Mutation(() => MoveProjectUpPayload, {
    description: 'Moves a project up by one place in the queue.',
  })
  moveProjectUp(
    @Arg('input', () => MoveProjectUpInput, { description: 'The project.' })
    input: MoveProjectUpInput,
    @Ctx() context: ApiContext,
    @Info() info: GraphQLResolveInfo,
  ) {
    return carryOut(context, info, asProject, (work) => moveProjectUp(work, input));
  }
}

@Resolver(() => ProjectPlan)
export class ProjectPlanResolver {
  @FieldResolver(() => Party, {
    nullable: true,
    description: 'Who does the work: the owner of the collection unless said; null if unknown.',
  })
  workedBy(@Root() plan: object, @Info() info: GraphQLResolveInfo) {
    return loadedField(plan, info);
  }
}

@Resolver(() => ProjectForecast)
export class ProjectForecastResolver {
  @FieldResolver(() => [TaskForecast], { description: 'Its open tasks that have an estimate.' })
  tasks(@Root() forecast: object, @Info() info: GraphQLResolveInfo) {
    return loadedField(forecast, info);
  }

  @FieldResolver(() => [TornadoBar], {
    description: 'Whose uncertainty moves the p80 most: up to twelve tasks, the widest bar first.',
  })
  tornado(@Root() forecast: object, @Info() info: GraphQLResolveInfo) {
    return loadedField(forecast, info);
  }
}

@Resolver(() => TaskForecast)
export class TaskForecastResolver {
  @FieldResolver(() => Task, { description: 'The task.' })
  task(@Root() forecast: object, @Info() info: GraphQLResolveInfo) {
    return loadedField(forecast, info);
  }
}

@Resolver(() => TornadoBar)
export class TornadoBarResolver {
  @FieldResolver(() => Task, { description: 'The task.' })
  task(@Root() bar: object, @Info() info: GraphQLResolveInfo) {
    return loadedField(bar, info);
  }
}
