import type { GraphQLResolveInfo } from 'graphql';
import { Arg, Ctx, Info, Mutation, Resolver } from 'type-graphql';
import type { ApiContext } from '../../api/kit/apiContext.js';
import { carryOut } from '../../api/kit/carryOut.js';
import { carryOutMany } from '../../api/kit/carryOutMany.js';
import { payloadOf } from '../../api/kit/payloadOf.js';
import { addTasks } from './addTasks.js';
import { changeTask } from './changeTask.js';
import { setPredecessors } from './setPredecessors.js';
import { AddTaskInput, AddTasksInput, ChangeTaskInput } from './task.inputs.js';
import { Task } from './task.type.js';
import { SetPredecessorsInput } from './taskProgress.inputs.js';

const asTask = { field: 'task', typeName: 'Task' };
const payload = (mutation: string, description: string) =>
  payloadOf(mutation, 'task', () => Task, description);
const AddTaskPayload = payload('addTask', 'The new task.');
const AddTasksPayload = payloadOf(
  'addTasks',
  'tasks',
  () => [Task] as never,
  'The new tasks, in the order given.',
);
const ChangeTaskPayload = payload('changeTask', 'The task as it is now.');
const SetPredecessorsPayload = payload('setPredecessors', 'The task as it is now.');

@Resolver(() => Task)
export class TaskChangesResolver {
  @Mutation(() => AddTaskPayload, { description: 'Adds a task at the end of a project.' })
  addTask(
    @Arg('input', () => AddTaskInput, { description: 'The new task.' }) input: AddTaskInput,
    @Ctx() context: ApiContext,
    @Info() info: GraphQLResolveInfo,
  ) {
    return carryOut(context, info, asTask, async (work) => {
      const { projectId, task } = input;
      const [id] = await addTasks(work, { projectId, tasks: [task] }, () => ['task']);
      return id as string;
    });
  }

  @Mutation(() => AddTasksPayload, {
    description: 'Adds tasks at the end of a project: all of them or none.',
  })
  addTasks(
    @Arg('input', () => AddTasksInput, { description: 'The new tasks.' }) input: AddTasksInput,
    @Ctx() context: ApiContext,
    @Info() info: GraphQLResolveInfo,
  ) {
    const asTasks = { field: 'tasks', typeName: 'Task' };
    return carryOutMany(context, info, asTasks, (work) => addTasks(work, input));
  }

  @Mutation(() => ChangeTaskPayload, {
    description: 'Changes what a task is, what it may take, or how it earns.',
  })
  changeTask(
    @Arg('input', () => ChangeTaskInput, { description: 'The change.' }) input: ChangeTaskInput,
    @Ctx() context: ApiContext,
    @Info() info: GraphQLResolveInfo,
  ) {
    return carryOut(context, info, asTask, (work) => changeTask(work, input));
  }

  @Mutation(() => SetPredecessorsPayload, {
    description: 'Says what a task waits for. Tasks that would wait for one another are refused.',
  })
  setPredecessors(
    @Arg('input', () => SetPredecessorsInput, { description: 'The tasks that come before.' })
    input: SetPredecessorsInput,
    @Ctx() context: ApiContext,
    @Info() info: GraphQLResolveInfo,
  ) {
    return carryOut(context, info, asTask, (work) => setPredecessors(work, input));
  }
}
