import type { GraphQLResolveInfo } from 'graphql';
import { Arg, Ctx, FieldResolver, ID, Info, Int, Query, Resolver, Root } from 'type-graphql';
import type { ApiContext } from '../../api/kit/apiContext.js';
import { argumentProblem, readArguments } from '../../api/kit/argumentProblem.js';
import { itemTypes, recordId } from '../../api/kit/globalId.js';
import { loadedField, loadRelations } from '../../api/kit/loadRelations.js';
import { pageSize } from '../../api/kit/pageArgs.js';
import { Task } from '../tasks/task.type.js';
import { HeldBackTask, NextTask, NextTasks } from './nextTask.type.js';
import { whatNext } from './whatNext.js';

const mostMinutes = 7 * 24 * 60;

@Resolver(() => NextTask)
export class NextTaskResolver {
  @Query(() => NextTasks, {
    description: 'What to do now, with the minutes that are free and what is at hand.',
  })
  async whatNext(
    @Arg('minutes', () => Int, { description: 'Minutes that are free now, 1 to 10080.' })
    minutes: number,
    @Arg('first', () => Int, {
      defaultValue: 5,
      description: 'How many at the most, from 1 to 100; of those held back as well.',
    })
    first: number,
    @Arg('itemId', () => ID, { nullable: true, description: 'Only on this rig or accessory.' })
    itemId: string | null | undefined,
    @Ctx() context: ApiContext,
    @Info() info: GraphQLResolveInfo,
  ) {
    if (minutes < 1 || minutes > mostMinutes) {
      throw argumentProblem(`"minutes" must be from 1 to ${mostMinutes}; it was ${minutes}.`);
    }
    const item = readArguments(() => (itemId ? recordId(itemTypes, itemId, ['itemId']) : null));
    const found = await whatNext(context, { minutes, most: pageSize(first), itemId: item });
    await loadRelations(context, info, 'NextTask', found.suggestions, ['suggestions']);
    await loadRelations(context, info, 'HeldBackTask', found.heldBack, ['heldBack']);
    return found;
  }

  @FieldResolver(() => Task, { description: 'The task, with its cautions.' })
  task(@Root() suggestion: object, @Info() info: GraphQLResolveInfo) {
    return loadedField(suggestion, info);
  }
}

@Resolver(() => HeldBackTask)
export class HeldBackTaskResolver {
  @FieldResolver(() => Task, { description: 'The task.' })
  task(@Root() held: object, @Info() info: GraphQLResolveInfo) {
    return loadedField(held, info);
  }
}
