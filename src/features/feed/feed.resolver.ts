import { Arg, Ctx, Query, Resolver, Root, Subscription } from 'type-graphql';
import type { ApiContext } from '../../api/kit/apiContext.js';
import { latestPosition } from './changeEvents.reads.js';
import { RecordsChanged } from './feed.type.js';
import { feedCursor, readFeedCursor } from './feedCursor.js';
import { followChanges, type FeedStep } from './followChanges.js';
import { shownStep } from './shownStep.js';

@Resolver()
export class FeedResolver {
  @Query(() => String, {
    description:
      'Where the feed of changes stands now. Ask for it with (or before) what you load, then subscribe to `recordsChanged` after it: nothing falls in between.',
  })
  async feedCursor(@Ctx() { database }: ApiContext): Promise<string> {
    return feedCursor(await latestPosition(database.reader));
  }

  @Subscription(() => RecordsChanged, {
    description:
      'What is changed, an event for each act once it has taken effect, whoever did it. Over graphql-transport-ws at /graphql.',
    subscribe: ({ args, context }) => {
      const { after } = args as { after?: string | null };
      return followChanges((context as ApiContext).database, readFeedCursor(after));
    },
  })
  recordsChanged(
    @Arg('after', () => String, {
      nullable: true,
      description:
        'A cursor that you had: what happened since comes first. Left out: from now on. If it is too old, or from another collection, one event says so (`isEverything`).',
    })
    _after: string | null,
    @Root() step: FeedStep,
    @Ctx() context: ApiContext,
  ): Promise<RecordsChanged> {
    return shownStep(context, step);
  }
}
