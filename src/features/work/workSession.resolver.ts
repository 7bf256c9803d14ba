import type { GraphQLResolveInfo } from 'graphql';
import { Args, Ctx, FieldResolver, Info, Int, Query, Resolver, Root } from 'type-graphql';
import type { ApiContext } from '../../api/kit/apiContext.js';
import { loadedField, loadRelations } from '../../api/kit/loadRelations.js';
import { PageArgs } from '../../api/kit/pageArgs.js';
import { rootPage } from '../../api/kit/rootPage.js';
import { Item } from '../items/item.type.js';
import { Party } from '../parties/party.type.js';
import { Task } from '../tasks/task.type.js';
import { readRunningTimers } from './runningTimers.reads.js';
import { sessionConditions } from './sessionConditions.js';
import { WorkSessionArgs } from './workSession.args.js';
import { workSessionReads } from './workSession.reads.js';
import {
  SessionOverlap,
  WorkBreakType,
  WorkSession,
  WorkSessionConnection,
} from './workSession.type.js';

@Resolver(() => WorkSession)
export class WorkSessionResolver {
  @Query(() => WorkSessionConnection, { description: 'Work sessions, the latest first.' })
  workSessions(
    @Args() args: WorkSessionArgs,
    @Ctx() context: ApiContext,
    @Info() info: GraphQLResolveInfo,
  ) {
    const { table, columns } = workSessionReads;
    return rootPage(context, info, args, {
      typeName: 'WorkSession',
      from: table,
      table,
      columns,
      sortBy: 'work_session.started_at',
      direction: 'DESC',
      where: sessionConditions(args.filter ?? {}),
    });
  }

  @Query(() => [WorkSession], { description: 'Timers that run now, one a person, oldest first.' })
  async runningTimers(@Ctx() context: ApiContext, @Info() info: GraphQLResolveInfo) {
    const rows = await readRunningTimers(context);
    await loadRelations(context, info, 'WorkSession', rows);
    return rows;
  }

  @FieldResolver(() => Party, { description: 'Who worked.' })
  person(@Root() session: object, @Info() info: GraphQLResolveInfo) {
    return loadedField(session, info);
  }

  @FieldResolver(() => Item, { description: 'The rig or accessory that was worked on.' })
  item(@Root() session: object, @Info() info: GraphQLResolveInfo) {
    return loadedField(session, info);
  }

  @FieldResolver(() => Task, {
    nullable: true,
    description: 'The task; null for time on the item as a whole.',
  })
  task(@Root() session: object, @Info() info: GraphQLResolveInfo) {
    return loadedField(session, info);
  }

  @FieldResolver(() => [WorkBreakType], { description: 'Its breaks, in order.' })
  breaks(@Root() session: object, @Info() info: GraphQLResolveInfo) {
    return loadedField(session, info);
  }

  @FieldResolver(() => Int, {
    nullable: true,
    description:
      'Seconds worked, net of breaks, up to now while it runs, overlaps not taken out. Null for a timer left running for more than 16 hours: say first when it ended.',
  })
  netSeconds(@Root() session: object, @Info() info: GraphQLResolveInfo) {
    return loadedField(session, info);
  }

  @FieldResolver(() => [SessionOverlap], {
    description: 'Other sessions of the same person that claim some of its time; it counts once.',
  })
  overlaps(@Root() session: object, @Info() info: GraphQLResolveInfo) {
    return loadedField(session, info);
  }

  @FieldResolver(() => Boolean, {
    description:
      'False: more sessions overlap than are listed, as after a list was brought in twice. Time counts once all the same.',
  })
  areOverlapsComplete(@Root() session: object, @Info() info: GraphQLResolveInfo) {
    return loadedField(session, info);
  }
}

@Resolver(() => SessionOverlap)
export class SessionOverlapResolver {
  @FieldResolver(() => WorkSession, { description: 'The other session.' })
  session(@Root() overlap: object, @Info() info: GraphQLResolveInfo) {
    return loadedField(overlap, info);
  }
}

@Resolver(() => Item)
export class SessionsOfItemResolver {
  @FieldResolver(() => WorkSessionConnection, { description: 'Time given to it, latest first.' })
  sessions(@Root() item: object, @Args() _page: PageArgs, @Info() info: GraphQLResolveInfo) {
    return loadedField(item, info);
  }
}

@Resolver(() => Task)
export class SessionsOfTaskResolver {
  @FieldResolver(() => WorkSessionConnection, { description: 'Time given to it, latest first.' })
  sessions(@Root() task: object, @Args() _page: PageArgs, @Info() info: GraphQLResolveInfo) {
    return loadedField(task, info);
  }
}
