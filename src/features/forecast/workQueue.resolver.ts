import type { GraphQLResolveInfo } from 'graphql';
import { Arg, Ctx, FieldResolver, ID, Info, Query, Resolver, Root } from 'type-graphql';
import type { ApiContext } from '../../api/kit/apiContext.js';
import { readArguments } from '../../api/kit/argumentProblem.js';
import { optionalRecordId } from '../../api/kit/globalId.js';
import { loadedField, loadRelations } from '../../api/kit/loadRelations.js';
import { personAsked } from '../pace/personAsked.js';
import { Party } from '../parties/party.type.js';
import { Project } from '../projects/project.type.js';
import { priceOfTrials } from './priceOfTrials.js';
import { workQueue } from './workQueue.js';
import { QueuedProject, QueueEffect, WorkQueue } from './workQueue.type.js';

@Resolver(() => WorkQueue)
export class WorkQueueResolver {
  @Query(() => WorkQueue, {
    description:
      'The projects that share one person, with finish dates, and what moving one up would do to the others.',
    complexity: priceOfTrials,
  })
  async workQueue(
    @Arg('personId', () => ID, {
      nullable: true,
      description: 'The person; left out: the owner of the collection.',
    })
    personId: string | null | undefined,
    @Arg('movedUpId', () => ID, {
      nullable: true,
      description: 'A project to be moved up by one place, to see what that would do.',
    })
    movedUpId: string | null | undefined,
    @Ctx() context: ApiContext,
    @Info() info: GraphQLResolveInfo,
  ) {
    const id = await personAsked(context, personId);
    const moved = readArguments(() =>
      optionalRecordId('Project', movedUpId ?? null, ['movedUpId']),
    );
    const row = await workQueue(context, id, moved);
    await loadRelations(context, info, 'WorkQueue', [row]);
    return row;
  }

  @FieldResolver(() => Party, { nullable: true, description: 'The person; null if not there.' })
  person(@Root() queue: object, @Info() info: GraphQLResolveInfo) {
    return loadedField(queue, info);
  }

  @FieldResolver(() => [QueuedProject], {
    description: 'Projects planned or active, by priority: the first hundred.',
  })
  projects(@Root() queue: object, @Info() info: GraphQLResolveInfo) {
    return loadedField(queue, info);
  }

  @FieldResolver(() => [QueueEffect], {
    description: 'The queue with that project one place up; empty when none was named.',
  })
  ifMovedUp(@Root() queue: object, @Info() info: GraphQLResolveInfo) {
    return loadedField(queue, info);
  }
}

@Resolver(() => QueuedProject)
export class QueuedProjectResolver {
  @FieldResolver(() => Project, { description: 'The project.' })
  project(@Root() queued: object, @Info() info: GraphQLResolveInfo) {
    return loadedField(queued, info);
  }
}

@Resolver(() => QueueEffect)
export class QueueEffectResolver {
  @FieldResolver(() => Project, { description: 'The project.' })
  project(@Root() effect: object, @Info() info: GraphQLResolveInfo) {
    return loadedField(effect, info);
  }
}
