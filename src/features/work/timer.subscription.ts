import type { GraphQLResolveInfo } from 'graphql';
import { Ctx, Field, Info, ObjectType, Resolver, Subscription } from 'type-graphql';
import type { ApiContext } from '../../api/kit/apiContext.js';
import { loadRelations } from '../../api/kit/loadRelations.js';
import { followTimers } from './followTimers.js';
import { readRunningTimers } from './runningTimers.reads.js';
import { WorkSession } from './workSession.type.js';

@ObjectType({ description: 'The timers as they are now.', simpleResolvers: true })
export class TimerChanged {
  @Field(() => [WorkSession], { description: 'Timers that run now, one a person, oldest first.' })
  runningTimers!: WorkSession[];
}

@Resolver()
export class TimerSubscriptionResolver {
  @Subscription(() => TimerChanged, {
    description:
      'The running timers: at once, and again whenever a timer or a break begins, ends or is corrected. After a lost connection subscribe again: the first event says how it stands.',
    subscribe: ({ context }) => followTimers((context as ApiContext).database),
  })
  async timerChanged(@Ctx() context: ApiContext, @Info() info: GraphQLResolveInfo) {
    const runningTimers = await readRunningTimers(context);
    await loadRelations(context, info, 'WorkSession', runningTimers, ['runningTimers']);
    return { runningTimers };
  }
}
