import type { GraphQLResolveInfo } from 'graphql';
import {
  Arg,
  Args,
  Ctx,
  FieldResolver,
  Float,
  Info,
  Mutation,
  Query,
  Resolver,
  Root,
} from 'type-graphql';
import type { ApiContext } from '../../api/kit/apiContext.js';
import { carryOut } from '../../api/kit/carryOut.js';
import { loadedField } from '../../api/kit/loadRelations.js';
import { MoneyAmount } from '../../api/kit/money.type.js';
import { PageArgs } from '../../api/kit/pageArgs.js';
import { payloadOf } from '../../api/kit/payloadOf.js';
import { rootPage } from '../../api/kit/rootPage.js';
import { Item } from '../items/item.type.js';
import { moneyAmount } from '../money/moneyAmount.js';
import { changeProject } from './changeProject.js';
import { openProject } from './openProject.js';
import type { ProjectEntity } from './project.entity.js';
import { ChangeProjectInput, OpenProjectInput, SetProjectStatusInput } from './project.inputs.js';
import { projectReads } from './project.reads.js';
import { Project, ProjectConnection } from './project.type.js';
import { ProjectStatus } from './projectStatus.js';
import { setProjectStatus } from './setProjectStatus.js';

const asProject = { field: 'project', typeName: 'Project' };
const payload = (mutation: string, description: string) =>
  payloadOf(mutation, 'project', () => Project, description);
const OpenProjectPayload = payload('openProject', 'The new project.');
const ChangeProjectPayload = payload('changeProject', 'The project as it is now.');
const SetProjectStatusPayload = payload('setProjectStatus', 'The project as it is now.');

@Resolver(() => Project)
export class ProjectResolver {
  @Query(() => ProjectConnection, { description: 'Projects in the order they were opened.' })
  projects(
    @Args() args: PageArgs,
    @Arg('status', () => [ProjectStatus], {
      nullable: true,
      description: 'Only projects that stand at one of these.',
    })
    status: ProjectStatus[] | null | undefined,
    @Ctx() context: ApiContext,
    @Info() info: GraphQLResolveInfo,
  ) {
    const { table, columns } = projectReads;
    const sql = context.database.reader.dialect.isAnyOf('project.status');
    return rootPage(context, info, args, {
      typeName: 'Project',
      from: table,
      table,
      columns,
      sortBy: 'project.recorded_at',
      where: status ? [{ sql, parameters: [JSON.stringify(status)] }] : [],
    });
  }

  @FieldResolver(() => Item, { description: 'The rig or accessory that is restored.' })
  item(@Root() project: object, @Info() info: GraphQLResolveInfo) {
    return loadedField(project, info);
  }

  @FieldResolver(() => MoneyAmount, {
    nullable: true,
    description: 'The most it may cost; null if there is no ceiling.',
  })
  ceiling(@Root() { ceilingMinorUnits, ceilingCurrency }: ProjectEntity) {
    if (ceilingMinorUnits === null || ceilingCurrency === null) return null;
    return moneyAmount(ceilingMinorUnits, ceilingCurrency);
  }

  @FieldResolver(() => Float, {
    nullable: true,
    description: 'The most hours that it may take; null if there is no ceiling.',
  })
  ceilingHours(@Root() { ceilingMinutes }: ProjectEntity) {
    return ceilingMinutes === null ? null : ceilingMinutes / 60;
  }

  @Mutation(() => OpenProjectPayload, { description: 'Opens a restoration of an item.' })
  openProject(
    @Arg('input', () => OpenProjectInput, { description: 'The new project.' })
    input: OpenProjectInput,
    @Ctx() context: ApiContext,
    @Info() info: GraphQLResolveInfo,
  ) {
    return carryOut(context, info, asProject, (work) => openProject(work, input));
  }

  @Mutation(() => ChangeProjectPayload, { description: 'Changes what a project aims at.' })
  changeProject(
    @Arg('input', () => ChangeProjectInput, { description: 'The change.' })
    input: ChangeProjectInput,
    @Ctx() context: ApiContext,
    @Info() info: GraphQLResolveInfo,
  ) {
    return carryOut(context, info, asProject, (work) => changeProject(work, input));
  }

  @Mutation(() => SetProjectStatusPayload, {
    description: 'Starts, defers, completes, abandons or reopens a project.',
  })
  setProjectStatus(
    @Arg('input', () => SetProjectStatusInput, { description: 'Where it stands.' })
    input: SetProjectStatusInput,
    @Ctx() context: ApiContext,
    @Info() info: GraphQLResolveInfo,
  ) {
    return carryOut(context, info, asProject, (work) => setProjectStatus(work, input));
  }
}

@Resolver(() => Item)
export class ProjectsOfItemResolver {
  @FieldResolver(() => [Project], { description: 'Its restorations, oldest first.' })
  projects(@Root() item: object, @Info() info: GraphQLResolveInfo) {
    return loadedField(item, info);
  }
}
