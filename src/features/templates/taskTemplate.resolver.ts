import type { GraphQLResolveInfo } from 'graphql';
import { Arg, Ctx, FieldResolver, Info, Mutation, Query, Resolver, Root } from 'type-graphql';
import type { ApiContext } from '../../api/kit/apiContext.js';
import { carryOut } from '../../api/kit/carryOut.js';
import { carryOutMany } from '../../api/kit/carryOutMany.js';
import { loadedField, loadRelations } from '../../api/kit/loadRelations.js';
import { payloadOf } from '../../api/kit/payloadOf.js';
import { Project } from '../projects/project.type.js';
import { Task } from '../tasks/task.type.js';
import { applyTaskTemplate } from './applyTaskTemplate.js';
import { changeTaskTemplate } from './changeTaskTemplate.js';
import { makeTaskTemplate } from './makeTaskTemplate.js';
import {
  ApplyTaskTemplateInput,
  ChangeTaskTemplateInput,
  MakeTaskTemplateInput,
} from './taskTemplate.inputs.js';
import { readTemplates } from './taskTemplate.reads.js';
import { TaskTemplate, TemplateTaskType } from './taskTemplate.type.js';

const asTemplate = { field: 'template', typeName: 'TaskTemplate' };
const payload = (mutation: string, description: string) =>
  payloadOf(mutation, 'template', () => TaskTemplate, description);
const MakeTaskTemplatePayload = payload('makeTaskTemplate', 'The new template.');
const ChangeTaskTemplatePayload = payload('changeTaskTemplate', 'The template as it is now.');
const ApplyTaskTemplatePayload = payloadOf(
  'applyTaskTemplate',
  'tasks',
  () => [Task] as never,
  'The new tasks, in the order of the template.',
);

@Resolver(() => TaskTemplate)
export class TaskTemplateResolver {
  @Query(() => [TaskTemplate], {
    description: 'Checklists for a kind of set or job: your own, then those that come with Reglow.',
  })
  async taskTemplates(
    @Arg('withRetired', () => Boolean, {
      defaultValue: false,
      description: 'Those of your own that were put away too.',
    })
    withRetired: boolean,
    @Ctx() context: ApiContext,
    @Info() info: GraphQLResolveInfo,
  ) {
    const rows = await readTemplates(context, withRetired);
    await loadRelations(context, info, 'TaskTemplate', rows);
    return rows;
  }

  @FieldResolver(() => [TemplateTaskType], { description: 'Its tasks, in order.' })
  tasks(@Root() template: object, @Info() info: GraphQLResolveInfo) {
    return loadedField(template, info);
  }

  @FieldResolver(() => Project, {
    nullable: true,
    description: 'The project that it was made from; null if it was not made from one.',
  })
  sourceProject(@Root() template: object, @Info() info: GraphQLResolveInfo) {
    return loadedField(template, info);
  }

  @Mutation(() => MakeTaskTemplatePayload, {
    description: 'Makes a template from a project, another template, or tasks.',
  })
  makeTaskTemplate(
    @Arg('input', () => MakeTaskTemplateInput, { description: 'The new template.' })
    input: MakeTaskTemplateInput,
    @Ctx() context: ApiContext,
    @Info() info: GraphQLResolveInfo,
  ) {
    return carryOut(context, info, asTemplate, (work) => makeTaskTemplate(work, input));
  }

  @Mutation(() => ChangeTaskTemplatePayload, { description: 'Changes a template of your own.' })
  changeTaskTemplate(
    @Arg('input', () => ChangeTaskTemplateInput, { description: 'The change.' })
    input: ChangeTaskTemplateInput,
    @Ctx() context: ApiContext,
    @Info() info: GraphQLResolveInfo,
  ) {
    return carryOut(context, info, asTemplate, (work) => changeTaskTemplate(work, input));
  }

  @Mutation(() => ApplyTaskTemplatePayload, {
    description: 'Adds the tasks of a template to a project: all that are chosen, or none.',
  })
  applyTaskTemplate(
    @Arg('input', () => ApplyTaskTemplateInput, { description: 'Which template, which project.' })
    input: ApplyTaskTemplateInput,
    @Ctx() context: ApiContext,
    @Info() info: GraphQLResolveInfo,
  ) {
    const asTasks = { field: 'tasks', typeName: 'Task' };
    return carryOutMany(context, info, asTasks, (work) => applyTaskTemplate(work, input));
  }
}
