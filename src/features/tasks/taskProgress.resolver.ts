import type { GraphQLResolveInfo } from 'graphql';
import { Arg, Ctx, Info, Mutation, Resolver } from 'type-graphql';
import type { ApiContext } from '../../api/kit/apiContext.js';
import { carryOut } from '../../api/kit/carryOut.js';
import { payloadOf } from '../../api/kit/payloadOf.js';
import { dropTask } from './dropTask.js';
import { finishTask } from './finishTask.js';
import { markSteps } from './markSteps.js';
import { reopenTask } from './reopenTask.js';
import { startTask } from './startTask.js';
import { statePercent } from './statePercent.js';
import { Task } from './task.type.js';
import { MarkStepsInput, StatePercentInput, TaskStatusInput } from './taskProgress.inputs.js';

const asTask = { field: 'task', typeName: 'Task' };
const payload = (mutation: string) =>
  payloadOf(mutation, 'task', () => Task, 'The task as it is now.');
const StartTaskPayload = payload('startTask');
const FinishTaskPayload = payload('finishTask');
const ReopenTaskPayload = payload('reopenTask');
const DropTaskPayload = payload('dropTask');
const MarkStepsPayload = payload('markSteps');
const StatePercentPayload = payload('statePercent');
const theTask = { description: 'The task.' };

@Resolver(() => Task)
export class TaskProgressResolver {
  @Mutation(() => StartTaskPayload, { description: 'Begins a task.' })
  startTask(
    @Arg('input', () => TaskStatusInput, theTask) input: TaskStatusInput,
    @Ctx() context: ApiContext,
    @Info() info: GraphQLResolveInfo,
  ) {
    return carryOut(context, info, asTask, (work) => startTask(work, input));
  }

  @Mutation(() => FinishTaskPayload, {
    description: 'A task is done: it has earned all its hours, whatever steps were marked.',
  })
  finishTask(
    @Arg('input', () => TaskStatusInput, theTask) input: TaskStatusInput,
    @Ctx() context: ApiContext,
    @Info() info: GraphQLResolveInfo,
  ) {
    return carryOut(context, info, asTask, (work) => finishTask(work, input));
  }

  @Mutation(() => ReopenTaskPayload, { description: 'A done or dropped task is open after all.' })
  reopenTask(
    @Arg('input', () => TaskStatusInput, theTask) input: TaskStatusInput,
    @Ctx() context: ApiContext,
    @Info() info: GraphQLResolveInfo,
  ) {
    return carryOut(context, info, asTask, (work) => reopenTask(work, input));
  }

  @Mutation(() => DropTaskPayload, {
    description: 'A task will not be done: it stays on record and no longer counts.',
  })
  dropTask(
    @Arg('input', () => TaskStatusInput, theTask) input: TaskStatusInput,
    @Ctx() context: ApiContext,
    @Info() info: GraphQLResolveInfo,
  ) {
    return carryOut(context, info, asTask, (work) => dropTask(work, input));
  }

  @Mutation(() => MarkStepsPayload, { description: 'Marks steps of a task as done, or not.' })
  markSteps(
    @Arg('input', () => MarkStepsInput, { description: 'The steps.' }) input: MarkStepsInput,
    @Ctx() context: ApiContext,
    @Info() info: GraphQLResolveInfo,
  ) {
    return carryOut(context, info, asTask, (work) => markSteps(work, input));
  }

  @Mutation(() => StatePercentPayload, {
    description: 'States how much of a task is done, with what shows it.',
  })
  statePercent(
    @Arg('input', () => StatePercentInput, { description: 'The share and its evidence.' })
    input: StatePercentInput,
    @Ctx() context: ApiContext,
    @Info() info: GraphQLResolveInfo,
  ) {
    return carryOut(context, info, asTask, (work) => statePercent(work, input));
  }
}
