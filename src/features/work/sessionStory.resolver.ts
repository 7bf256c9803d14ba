import type { GraphQLResolveInfo } from 'graphql';
import { Ctx, FieldResolver, Info, Resolver, Root } from 'type-graphql';
import type { ApiContext } from '../../api/kit/apiContext.js';
import { loadedField } from '../../api/kit/loadRelations.js';
import { endQuestion } from './endQuestion.js';
import { SessionVersion } from './sessionVersion.type.js';
import type { WorkSessionEntity } from './workSession.entity.js';
import { WorkSession } from './workSession.type.js';

/** What a session was, and what must be asked about it. */
@Resolver(() => WorkSession)
export class SessionStoryResolver {
  @FieldResolver(() => [SessionVersion], {
    description: 'What it said before each change, the latest first; empty if it never changed.',
  })
  earlierVersions(@Root() session: object, @Info() info: GraphQLResolveInfo) {
    return loadedField(session, info);
  }

  @FieldResolver(() => String, {
    nullable: true,
    description:
      'What to ask the person of a timer that was left running: nothing of it counts until `stopTimer` is told when the work ended. Null for every other session.',
  })
  endQuestion(@Root() session: WorkSessionEntity, @Ctx() { nowMs }: ApiContext) {
    return endQuestion(session, nowMs);
  }
}
